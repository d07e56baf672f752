package brightseam.traveller;

import brightseam.kernel.Decision;
import brightseam.kernel.Rules;
import brightseam.people.Role;
import brightseam.procedure.Procedure;
import brightseam.procedure.ReadingSpec;
import brightseam.procedure.Step;
import brightseam.traveller.TravellerCommand.CorrectReading;
import brightseam.traveller.TravellerCommand.TakeReading;
import brightseam.traveller.TravellerEvent.NonconformanceOpened;
import brightseam.traveller.TravellerEvent.ReadingCorrected;
import brightseam.traveller.TravellerEvent.ReadingTaken;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What may be written down, and what an entry outside its limits brings about. */
final class ReadingRules {

    private static final int DIGITS_MAX = 9;

    private final Traveller traveller;
    private final Procedure procedure;

    ReadingRules(Traveller traveller, Procedure procedure) {
        this.traveller = traveller;
        this.procedure = procedure;
    }

    Decision<TravellerEvent> take(TakeReading c) {
        Optional<StepRun> running = traveller.run(c.step());
        if (running.isEmpty()) {
            return Decision.refused(List.of(new TravellerRefusal.NotStarted(c.step())));
        }
        Step step = procedure.step(c.step());
        Optional<ReadingSpec> known = spec(step, c.reading());
        if (known.isEmpty()) {
            return Decision.refused(List.of(new TravellerRefusal.UnknownReading(step.id(), c.reading())));
        }
        StepRun run = running.get();
        ReadingSpec spec = known.get();
        return Rules.check()
                .refuseFor(run.signedAt().map(at -> new TravellerRefusal.AlreadySigned(step.id(),
                        run.signature().orElseThrow().signer().name(), at)))
                .refuseFor(run.reading(spec.id()).filter(earlier -> !mayRepeat(step, run, spec, earlier)).map(earlier ->
                        new TravellerRefusal.ReadingAlreadyTaken(step.id(), spec.id(), earlier.current())))
                .refuseIf(isMalformed(spec, c.value()), () -> malformed(step, spec, c.value()))
                .refuseFor(tooSoon(step, run, spec))
                .acceptWith(() -> taken(step, run, spec, c));
    }

    Decision<TravellerEvent> correct(CorrectReading c) {
        Optional<Step> step = procedure.find(c.step());
        Optional<ReadingSpec> spec = step.flatMap(found -> spec(found, c.reading()));
        Optional<Reading> reading = traveller.run(c.step()).flatMap(run -> run.reading(c.reading()));
        if (spec.isEmpty() || reading.isEmpty()) {
            return Decision.refused(List.of(new TravellerRefusal.ReadingMissing(c.step(), c.reading())));
        }
        boolean entitled = reading.get().by().equals(c.signer().badge())
                || c.signer().has(Role.LEAD) || c.signer().has(Role.INSPECTOR);
        return Rules.check()
                .refuseIf(isMalformed(spec.get(), c.value()), () -> malformed(step.get(), spec.get(), c.value()))
                .refuseIf(reading.get().current().compareTo(c.value()) == 0,
                        () -> new TravellerRefusal.NothingToCorrect(c.step(), c.reading()))
                .refuseIf(c.reason().isBlank(), TravellerRefusal.ReasonMissing::new)
                .refuseIf(!entitled, () -> new TravellerRefusal.RoleMissing(c.signer().badge(),
                        List.of(Role.LEAD, Role.INSPECTOR)))
                .acceptWith(() -> corrected(spec.get(), reading.get(), c));
    }

    private List<TravellerEvent> taken(Step step, StepRun run, ReadingSpec spec, TakeReading c) {
        boolean inLimits = spec.limits().admits(c.value());
        List<TravellerEvent> events = new ArrayList<>();
        events.add(new ReadingTaken(c.origin(), step.id(), spec.id(), c.value(), inLimits));
        if (!inLimits && !isBefore(step, spec)) {
            events.add(outOfLimits(run, spec, c.value(), c));
        }
        return events;
    }

    private List<TravellerEvent> corrected(ReadingSpec spec, Reading reading, CorrectReading c) {
        boolean inLimits = spec.limits().admits(c.value());
        List<TravellerEvent> events = new ArrayList<>();
        events.add(new ReadingCorrected(c.origin(), c.step(), c.reading(), reading.current(), c.value(), inLimits,
                c.reason(), Signature.under(traveller, procedure, c.signer(), Meaning.CORRECTED)));
        StepRun run = traveller.run(c.step()).orElseThrow();
        boolean mayBeReadAgain = isBefore(procedure.step(c.step()), spec) && run.holdBegunAt().isEmpty();
        if (!inLimits && reading.currentInLimits() && !mayBeReadAgain) {
            events.add(outOfLimits(run, spec, c.value(), c));
        }
        return events;
    }

    private NonconformanceOpened outOfLimits(StepRun run, ReadingSpec spec, BigDecimal value, TravellerCommand c) {
        return new NonconformanceOpened(c.origin(), traveller.nextNonconformance(),
                Nonconformance.Cause.READING_OUT_OF_LIMITS, run.step(), run.pass(), traveller.pieces(),
                spec.id() + " " + value.toPlainString(), Optional.empty());
    }

    /** What is read before the hold may be read again until it is in order; a repaired piece is measured again. */
    private boolean mayRepeat(Step step, StepRun run, ReadingSpec spec, Reading earlier) {
        if (earlier.currentInLimits()) {
            return false;
        }
        return isRepaired(run, spec) || isBefore(step, spec) && run.holdBegunAt().isEmpty();
    }

    /** Whether {@code spec} has to be read before {@code run} is signed: never read, or mended since it was. */
    boolean isDue(StepRun run, ReadingSpec spec) {
        return run.reading(spec.id()).map(latest -> !latest.currentInLimits() && isRepaired(run, spec)).orElse(true);
    }

    /** Whether the latest nonconformance about this very reading was mended: then the old value says nothing. */
    private boolean isRepaired(StepRun run, ReadingSpec spec) {
        return traveller.nonconformances().stream()
                .filter(nc -> nc.cause() == Nonconformance.Cause.READING_OUT_OF_LIMITS)
                .filter(nc -> nc.step().equals(run.step()) && nc.pass() == run.pass())
                .filter(nc -> nc.text().startsWith(spec.id() + " "))
                .reduce((earlier, later) -> later)
                .flatMap(Nonconformance::decision)
                .filter(how -> how.disposition() == Disposition.REPAIR).isPresent();
    }

    private static Optional<TravellerRefusal> tooSoon(Step step, StepRun run, ReadingSpec spec) {
        if (step.hold().isEmpty() || isBefore(step, spec) || run.holdEndedAt().isPresent()) {
            return Optional.empty();
        }
        return Optional.of(run.holdBegunAt().isPresent() ? new TravellerRefusal.HoldStillRunning(step.id())
                : new TravellerRefusal.HoldNotBegun(step.id()));
    }

    private static boolean isBefore(Step step, ReadingSpec spec) {
        return step.hold().isPresent() && spec.beforeHold();
    }

    private static Optional<ReadingSpec> spec(Step step, String reading) {
        return step.readings().stream().filter(spec -> spec.id().equals(reading)).findFirst();
    }

    private static boolean isMalformed(ReadingSpec spec, BigDecimal value) {
        boolean look = value.signum() == 0 || value.compareTo(BigDecimal.ONE) == 0;
        boolean writable = value.precision() <= DIGITS_MAX && Math.abs((long) value.scale()) <= DIGITS_MAX;
        return !writable || value.stripTrailingZeros().scale() > spec.decimals() || spec.isPassFail() && !look;
    }

    private static TravellerRefusal malformed(Step step, ReadingSpec spec, BigDecimal value) {
        return new TravellerRefusal.ReadingMalformed(step.id(), spec.id(), value, spec.decimals());
    }
}

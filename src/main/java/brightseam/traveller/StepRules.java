package brightseam.traveller;

import brightseam.kernel.Decision;
import brightseam.kernel.Rules;
import brightseam.kernel.Moment;
import brightseam.kernel.StepId;
import brightseam.procedure.Hold;
import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import brightseam.traveller.TravellerCommand.BeginHold;
import brightseam.traveller.TravellerCommand.CutHoldShort;
import brightseam.traveller.TravellerCommand.EndHold;
import brightseam.traveller.TravellerCommand.StartStep;
import brightseam.traveller.TravellerEvent.HoldBegun;
import brightseam.traveller.TravellerEvent.StepStarted;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** When a step may begin, and when its hold may begin and end. */
final class StepRules {

    private final Traveller traveller;
    private final Procedure procedure;
    private final Course course;

    StepRules(Traveller traveller, Procedure procedure) {
        this.traveller = traveller;
        this.procedure = procedure;
        this.course = new Course(traveller, procedure);
    }

    Decision<TravellerEvent> start(StartStep c) {
        Optional<Step> found = procedure.find(c.step());
        if (found.isEmpty()) {
            return Decision.refused(List.of(new TravellerRefusal.UnknownStep(c.step())));
        }
        Step step = found.get();
        Optional<TravellerRefusal> second = SignRules.alreadySigned(traveller, step.id());
        if (second.isPresent()) {
            return Decision.refused(List.of(second.get()));
        }
        if (step.inSession()) {
            return Decision.refused(List.of(new TravellerRefusal.ContinuesInSession(step.id())));
        }
        return Rules.check()
                .refuseFor(outOfTurn(step))
                .refuseIf(traveller.isInQuarantine() && !course.makesSafe(step.id()), this::quarantine)
                .refuseAll(station(step, c))
                .refuseFor(new BinRules(traveller, procedure).unfitFor(step))
                .refuseAll(passInObjections(step, c.origin().at()))
                .refuseIf(!step.cautions().isEmpty() && !c.cautionsRead(),
                        () -> new TravellerRefusal.CautionsNotRead(step.id()))
                .refuseIf(step.gloves().isPresent() && !c.glovesOn(),
                        () -> new TravellerRefusal.GlovesNotOn(step.id(), step.gloves().orElseThrow()))
                .refuseAll(notScanned(step, c.touching()))
                .refuseAll(c.objections())
                .acceptWith(() -> started(step, c));
    }

    List<TravellerRefusal> notScanned(Step step, List<Contact> touching) {
        return Uses.missing(Uses.asked(traveller, procedure, step), touching).stream()
                .<TravellerRefusal>map(use -> new TravellerRefusal.ContactNotScanned(step.id(), use.kind(), use.type()))
                .toList();
    }

    private static List<TravellerEvent> started(Step step, StartStep c) {
        List<TravellerEvent> events = new ArrayList<>();
        events.add(new StepStarted(c.origin(), step.id(), c.station().map(TravellerCommand.StationFact::id),
                c.cautionsRead(), step.gloves(), c.loadWith().stream().sorted().toList()));
        if (!c.touching().isEmpty()) {
            events.add(new TravellerEvent.ContactMade(c.origin(), step.id(), c.touching()));
        }
        if (step.hold().isPresent() && !Course.readsBeforeHold(step)) {
            events.add(new HoldBegun(c.origin(), step.id()));
        }
        return events;
    }

    Decision<TravellerEvent> beginHold(BeginHold c) {
        Optional<StepRun> running = traveller.run(c.step());
        if (running.isEmpty()) {
            return notStarted(c.step());
        }
        Step step = procedure.step(c.step());
        StepRun run = running.get();
        Rules broken = Rules.check()
                .refuseIf(step.hold().isEmpty(), () -> new TravellerRefusal.NoHold(step.id()))
                .refuseFor(run.holdBegunAt().map(at -> new TravellerRefusal.HoldAlreadyBegun(step.id(), at)))
                .refuseIf(traveller.isInQuarantine() && !course.makesSafe(step.id()), this::quarantine);
        step.readings().stream().filter(spec -> spec.beforeHold()).forEach(spec -> {
            Optional<Reading> reading = run.reading(spec.id());
            broken.refuseIf(reading.isEmpty(), () -> new TravellerRefusal.ReadingMissing(step.id(), spec.id()));
            broken.refuseFor(reading.filter(value -> !value.currentInLimits())
                    .map(value -> new TravellerRefusal.NotFitToBegin(step.id(), spec.id(), value.current())));
        });
        return broken.acceptWith(() -> List.of(new HoldBegun(c.origin(), step.id())));
    }

    /** Ending a hold is never held up by quarantine: what is too long in a bath has to come out. */
    Decision<TravellerEvent> endHold(EndHold c) {
        Optional<StepRun> running = traveller.run(c.step());
        if (running.isEmpty()) {
            return notStarted(c.step());
        }
        Step step = procedure.step(c.step());
        StepRun run = running.get();
        if (step.hold().isEmpty()) {
            return Decision.refused(List.of(new TravellerRefusal.NoHold(step.id())));
        }
        if (run.holdBegunAt().isEmpty()) {
            return Decision.refused(List.of(new TravellerRefusal.HoldNotBegun(step.id())));
        }
        return Rules.check()
                .refuseFor(run.holdEndedAt().map(at -> new TravellerRefusal.HoldAlreadyEnded(step.id(), at)))
                .refuseFor(tooEarly(step, run, c.origin().at()))
                .acceptWith(() -> List.of(new TravellerEvent.HoldEnded(c.origin(), step.id())));
    }

    /** Out before the minimum: allowed at any time, never in silence, and no signature follows from it. */
    Decision<TravellerEvent> cutHoldShort(CutHoldShort c) {
        Optional<StepRun> running = traveller.run(c.step()).filter(StepRun::isHolding);
        if (running.isEmpty()) {
            return Decision.refused(List.of(new TravellerRefusal.HoldNotBegun(c.step())));
        }
        StepRun run = running.get();
        Moment earliest = Course.earliestEnd(procedure.step(c.step()).hold().orElseThrow(), run);
        return Rules.check()
                .refuseIf(!c.origin().at().isBefore(earliest),
                        () -> new TravellerRefusal.HoldLongEnough(c.step(), earliest))
                .refuseIf(c.reason().isBlank(), TravellerRefusal.ReasonMissing::new)
                .acceptWith(() -> List.of(
                        new TravellerEvent.NonconformanceOpened(c.origin(), traveller.nextNonconformance(),
                                Nonconformance.Cause.HOLD_CUT_SHORT, run.step(), run.pass(), traveller.pieces(),
                                c.reason(), Optional.empty()),
                        new TravellerEvent.HoldEnded(c.origin(), c.step())));
    }

    private static Optional<TravellerRefusal> tooEarly(Step step, StepRun run, Moment now) {
        Hold hold = step.hold().orElseThrow();
        Moment earliest = Course.earliestEnd(hold, run);
        return now.isBefore(earliest)
                ? Optional.of(new TravellerRefusal.HoldNotElapsed(step.id(), run.holdBegunAt().orElseThrow(),
                        earliest, now))
                : Optional.empty();
    }

    Optional<TravellerRefusal> outOfTurn(Step step) {
        Optional<StepRun> run = traveller.run(step.id());
        if (run.isPresent()) {
            return Optional.of(new TravellerRefusal.AlreadyStarted(
                    step.id(), run.get().startedBy(), run.get().startedAt()));
        }
        boolean inTurn = course.startable().filter(step::equals).isPresent();
        return inTurn ? Optional.empty()
                : Optional.of(new TravellerRefusal.NotThisStepYet(step.id(), traveller.currentStep().orElseThrow()));
    }

    private static List<TravellerRefusal> station(Step step, StartStep c) {
        if (c.station().isEmpty()) {
            return step.isInspectionPoint() ? List.of()
                    : List.of(new TravellerRefusal.NoStation(step.id(), step.station()));
        }
        TravellerCommand.StationFact station = c.station().get();
        List<TravellerRefusal> refusals = new ArrayList<>();
        if (!station.stationClass().equals(step.station())) {
            refusals.add(new TravellerRefusal.WrongStation(
                    step.id(), step.station(), station.id(), station.stationClass()));
        }
        if (station.outOfUse()) {
            refusals.add(new TravellerRefusal.StationOutOfUse(station.id()));
        }
        return refusals;
    }

    private List<TravellerRefusal> passInObjections(Step step, Moment now) {
        return step.kind() == StepKind.PASS_IN ? PassIn.objections(traveller, procedure, step, now) : List.of();
    }

    private TravellerRefusal quarantine() {
        return QuarantineRules.stopped(traveller);
    }

    private static Decision<TravellerEvent> notStarted(StepId step) {
        return Decision.refused(List.of(new TravellerRefusal.NotStarted(step)));
    }
}

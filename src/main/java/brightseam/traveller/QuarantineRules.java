package brightseam.traveller;

import brightseam.kernel.Decision;
import brightseam.kernel.Rules;
import brightseam.kernel.StepId;
import brightseam.people.Role;
import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import brightseam.traveller.TravellerCommand.Decide;
import brightseam.traveller.TravellerCommand.MarkSuspect;
import brightseam.traveller.TravellerCommand.ReportNonconformance;
import brightseam.traveller.TravellerCommand.ReportTouch;
import brightseam.traveller.TravellerEvent.NonconformanceOpened;
import brightseam.traveller.TravellerEvent.ReturnedToStep;
import brightseam.traveller.TravellerEvent.WindowEnded;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reports, dispositions and returns. */
final class QuarantineRules {

    private static final List<Role> SUSPECTING = List.of(Role.LEAD, Role.INSPECTOR, Role.PROCESS_CONTROL);

    private final Traveller traveller;
    private final Procedure procedure;
    private final Course course;

    QuarantineRules(Traveller traveller, Procedure procedure) {
        this.traveller = traveller;
        this.procedure = procedure;
        this.course = new Course(traveller, procedure);
    }

    /** That open nonconformances stop {@code traveller}. */
    static TravellerRefusal stopped(Traveller traveller) {
        return new TravellerRefusal.InQuarantine(traveller.id(),
                traveller.openNonconformances().stream().map(Nonconformance::number).toList());
    }

    Decision<TravellerEvent> touch(ReportTouch c) {
        return Rules.check()
                .refuseIf(!(traveller.window() instanceof Window.Open),
                        () -> new TravellerRefusal.NothingToTouch(traveller.id()))
                .refuseIf(c.what().isBlank(), TravellerRefusal.ReasonMissing::new)
                .acceptWith(() -> List.of(
                        new TravellerEvent.TouchReported(c.origin(), c.what()),
                        new WindowEnded(c.origin(), WindowEnd.TOUCHED),
                        new ReturnedToStep(c.origin(), procedure.touchReturnsTo(), "touched: " + c.what(),
                                course.begunFrom(procedure.touchReturnsTo()))));
    }

    Decision<TravellerEvent> report(ReportNonconformance c) {
        StepId step = traveller.currentStep().orElse(procedure.route().getLast());
        return Rules.check()
                .refuseIf(c.text().isBlank(), TravellerRefusal.ReasonMissing::new)
                .refuseIf(!LotRules.has(traveller, c.pieces()),
                        () -> new TravellerRefusal.NoSuchPieces(c.pieces(), traveller.pieces()))
                .acceptWith(() -> List.of(new NonconformanceOpened(c.origin(), traveller.nextNonconformance(),
                        Nonconformance.Cause.REPORTED, step, traveller.pass(step),
                        c.pieces().stream().sorted().distinct().toList(), c.text(), Optional.empty())));
    }

    /** Pieces that were scrapped cannot be suspect any more; everything else can, at any time. */
    Decision<TravellerEvent> markSuspect(MarkSuspect c) {
        StepId step = c.step().filter(procedure.route()::contains)
                .or(traveller::currentStep).orElse(procedure.route().getLast());
        return Rules.check()
                .refuseIf(traveller.phase() == Phase.SCRAPPED,
                        () -> new TravellerRefusal.TravellerEnded(traveller.id(), traveller.phase()))
                .refuseIf(SUSPECTING.stream().noneMatch(c.signer()::has),
                        () -> new TravellerRefusal.RoleMissing(c.signer().badge(), SUSPECTING))
                .refuseIf(c.reason().isBlank(), TravellerRefusal.ReasonMissing::new)
                .acceptWith(() -> List.of(new NonconformanceOpened(c.origin(), traveller.nextNonconformance(),
                        Nonconformance.Cause.SUSPECT, step, traveller.pass(step), traveller.pieces(), c.reason(),
                        Optional.of(Signature.under(traveller, procedure, c.signer(), Meaning.SUSPECTED)))));
    }

    Decision<TravellerEvent> decide(Decide c) {
        Optional<Nonconformance> open = traveller.openNonconformances().stream()
                .filter(nc -> nc.number() == c.number()).findFirst();
        if (open.isEmpty()) {
            return Decision.refused(List.of(new TravellerRefusal.NotOpen(c.number())));
        }
        Optional<StepRun> holding = traveller.runs().values().stream().filter(StepRun::isHolding).findFirst();
        return Rules.check()
                .refuseIf(c.disposition().roles().stream().noneMatch(c.signer()::has), () ->
                        new TravellerRefusal.RoleMissing(c.signer().badge(),
                                c.disposition().roles().stream().sorted().toList()))
                .refuseIf(c.reason().isBlank(), TravellerRefusal.ReasonMissing::new)
                .refuseIf(!returnFits(open.get(), c), () -> new TravellerRefusal.ReturnNotAllowed(returns(open.get())))
                .refuseIf(waives(open.get(), c), () -> new TravellerRefusal.HoldCannotBeWaived(open.get().step()))
                .refuseFor(holding.map(run -> new TravellerRefusal.HoldStillRunning(run.step())))
                .refuseFor(c.returnTo().flatMap(back -> course.gap()
                        .filter(gap -> course.makesSafe(gap.to())).map(gap ->
                        new TravellerRefusal.NotThisStepYet(back, gap.to()))))
                .acceptWith(() -> decided(open.get(), c));
    }

    /** Steps that a rework of {@code nc} may return to, out of those that the procedure names: begun, or at hand. */
    List<StepId> returns(Nonconformance nc) {
        Stream<StepId> again = switch (nc.cause()) {
            case HOLD_CUT_SHORT -> Stream.of(nc.step());
            case JOINT_EXCURSION, JOINT_UNPROVEN, JOINT_REJECTED ->
                ChamberRules.inSession(procedure, StepKind.WELD).map(Step::id).stream();
            case HOLD_OVERRUN, GAP_EXCEEDED, TIME_NOT_OBSERVED, READING_OUT_OF_LIMITS, INSPECTION_REJECTED, REPORTED,
                    SUSPECT ->
                Stream.of();
        };
        return Stream.concat(procedure.step(nc.step()).reworkTo().stream(), again).distinct()
                .filter(step -> traveller.runs().containsKey(step)
                        || traveller.currentStep().filter(step::equals).isPresent())
                .filter(this::mayRepeat)
                .toList();
    }

    /** Once the clean window is over nothing is welded again before it has been cleaned again. */
    private boolean mayRepeat(StepId id) {
        Step step = procedure.step(id);
        return step.kind() != StepKind.WELD || !step.inSession() || traveller.window() instanceof Window.Open;
    }

    private static boolean waives(Nonconformance nc, Decide c) {
        return nc.cause() == Nonconformance.Cause.HOLD_CUT_SHORT
                && (c.disposition() == Disposition.USE_AS_IS || c.disposition() == Disposition.REPAIR);
    }

    private boolean returnFits(Nonconformance nc, Decide c) {
        return c.disposition() == Disposition.REWORK
                ? c.returnTo().filter(returns(nc)::contains).isPresent()
                : c.returnTo().isEmpty();
    }

    private List<TravellerEvent> decided(Nonconformance nc, Decide c) {
        List<TravellerEvent> events = new ArrayList<>();
        events.add(new TravellerEvent.Dispositioned(c.origin(), nc.number(), c.disposition(), c.reason(),
                Signature.under(traveller, procedure, c.signer(), Meaning.DISPOSITIONED)));
        switch (c.disposition()) {
            case REWORK -> events.addAll(returned(c.returnTo().orElseThrow(), c));
            case SCRAP -> events.addAll(scrapped(nc, c));
            case REPAIR, USE_AS_IS -> { }
        }
        return events;
    }

    private List<TravellerEvent> returned(StepId back, Decide c) {
        List<TravellerEvent> events = new ArrayList<>();
        boolean undoesCleaning = procedure.position(back) <= procedure.position(procedure.window().openedBy());
        if (undoesCleaning && traveller.window() instanceof Window.Open) {
            events.add(new WindowEnded(c.origin(), WindowEnd.RETURNED));
        }
        events.add(new ReturnedToStep(c.origin(), back, c.reason(), course.begunFrom(back)));
        return events;
    }

    private List<TravellerEvent> scrapped(Nonconformance nc, Decide c) {
        List<TravellerEvent> events = new ArrayList<>();
        List<Integer> gone = nc.pieces().stream().filter(traveller.pieces()::contains).toList();
        events.add(new TravellerEvent.PiecesScrapped(c.origin(), gone));
        traveller.openNonconformances().stream()
                .filter(other -> other.number() != nc.number() && gone.containsAll(other.pieces()))
                .forEach(other -> events.add(new TravellerEvent.Dispositioned(c.origin(), other.number(),
                        Disposition.SCRAP, c.reason(),
                        Signature.under(traveller, procedure, c.signer(), Meaning.DISPOSITIONED))));
        if (gone.size() == traveller.pieces().size() && traveller.window() instanceof Window.Open) {
            events.add(new WindowEnded(c.origin(), WindowEnd.TRAVELLER_ENDED));
        }
        return events;
    }
}

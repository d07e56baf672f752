package brightseam.traveller;

import brightseam.kernel.Decision;
import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.Rules;
import brightseam.people.Role;
import brightseam.procedure.Procedure;
import brightseam.procedure.SignedBy;
import brightseam.procedure.Step;
import brightseam.traveller.TravellerCommand.EnterLate;
import brightseam.traveller.TravellerEvent.NonconformanceOpened;
import brightseam.traveller.TravellerEvent.StepEnteredLate;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * When a step may be entered that was done before anybody could write it down. It begins at the moment of its entry,
 * for every clock of the shop; the time that is stated is shown beside it and measures nothing. So a hold, which
 * nobody observed, is never entered late, and a gap behind the step opens a nonconformance.
 */
final class LateRules {

    private final Traveller traveller;
    private final Procedure procedure;

    LateRules(Traveller traveller, Procedure procedure) {
        this.traveller = traveller;
        this.procedure = procedure;
    }

    Decision<TravellerEvent> enter(EnterLate c) {
        return switch (new StepRules(traveller, procedure).start(c.start())) {
            case Decision.Refused<TravellerEvent> refused -> refused;
            case Decision.Accepted<TravellerEvent>(List<TravellerEvent> started) -> {
                Step step = procedure.step(c.start().step());
                yield Rules.check()
                        .refuseAll(notFor(step))
                        .refuseAll(notAt(step, c.doneAt(), c.origin().at()))
                        .refuseIf(c.reason().isBlank(), TravellerRefusal.ReasonMissing::new)
                        .refuseIf(!c.signer().has(entitled(step)), () -> new TravellerRefusal.RoleMissing(
                                c.signer().badge(), List.of(entitled(step))))
                        .acceptWith(() -> entered(step, started, c));
            }
        };
    }

    /** Whether a way to enter {@code step} late is worth offering. */
    static boolean mayBeLate(Procedure procedure, Step step) {
        return step.hold().isEmpty() && !step.isInspectionPoint() && !step.inSession()
                && !procedure.window().openedBy().equals(step.id());
    }

    private List<Refusal> notFor(Step step) {
        List<Refusal> refusals = new ArrayList<>();
        step.hold().ifPresent(hold -> refusals.add(new TravellerRefusal.LateHold(step.id())));
        if (step.isInspectionPoint()) {
            refusals.add(new TravellerRefusal.LateInspection(step.id()));
        }
        if (procedure.window().openedBy().equals(step.id())) {
            refusals.add(new TravellerRefusal.LateWindow(step.id()));
        }
        return refusals;
    }

    private List<Refusal> notAt(Step step, Instant doneAt, Moment now) {
        List<Refusal> refusals = new ArrayList<>();
        if (doneAt.isAfter(now.wall())) {
            refusals.add(new TravellerRefusal.LateInFuture(step.id(), doneAt, now));
        }
        before(step).filter(doneAt::isBefore).ifPresent(earliest ->
                refusals.add(new TravellerRefusal.LateBeforePrevious(step.id(), doneAt, earliest)));
        return refusals;
    }

    /** When the step before was done: as it was observed or, where that was entered late too, as it was stated. */
    private Optional<Instant> before(Step step) {
        int place = procedure.position(step.id());
        Optional<Instant> previous = place == 0 ? Optional.empty()
                : traveller.run(procedure.steps().get(place - 1).id()).flatMap(LateRules::end);
        return previous.or(() -> Optional.of(traveller.releasedAt().wall()));
    }

    private static Optional<Instant> end(StepRun run) {
        return run.late().map(StepRun.Late::doneAt)
                .or(() -> run.holdEndedAt().or(run::signedAt).map(Moment::wall));
    }

    private List<TravellerEvent> entered(Step step, List<TravellerEvent> started, EnterLate c) {
        List<TravellerEvent> events = new ArrayList<>(started);
        events.add(new StepEnteredLate(c.origin(), step.id(), c.doneAt(), c.reason().strip(),
                Signature.under(traveller, procedure, c.signer(), Meaning.STATED_LATE)));
        step.gap().ifPresent(gap -> events.add(new NonconformanceOpened(c.origin(), traveller.nextNonconformance(),
                Nonconformance.Cause.TIME_NOT_OBSERVED, step.id(), traveller.pass(step.id()), traveller.pieces(),
                "longest gap " + gap.maximum(), Optional.empty())));
        return events;
    }

    private static Role entitled(Step step) {
        return step.signedBy() == SignedBy.LEAD ? Role.LEAD : Role.FABRICATOR;
    }
}

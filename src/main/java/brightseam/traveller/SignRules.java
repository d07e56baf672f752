package brightseam.traveller;

import brightseam.kernel.Decision;
import brightseam.kernel.Moment;
import brightseam.kernel.StepId;
import brightseam.people.Role;
import brightseam.people.Signer;
import brightseam.procedure.BinClass;
import brightseam.procedure.Procedure;
import brightseam.procedure.SignedBy;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import brightseam.traveller.TravellerCommand.RejectStep;
import brightseam.traveller.TravellerCommand.SignStep;
import brightseam.traveller.TravellerCommand.StampStep;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** When a step may be signed, and an inspection point stamped or rejected. */
final class SignRules {

    private final Traveller traveller;
    private final Procedure procedure;

    SignRules(Traveller traveller, Procedure procedure) {
        this.traveller = traveller;
        this.procedure = procedure;
    }

    Decision<TravellerEvent> sign(SignStep c) {
        Optional<Step> found = procedure.find(c.step());
        if (found.isEmpty()) {
            return unknown(c.step());
        }
        Step step = found.get();
        Role role = step.signedBy() == SignedBy.LEAD ? Role.LEAD : Role.FABRICATOR;
        return new Broken()
                .addAll(unfinished(step))
                .when(step.isInspectionPoint(),
                        () -> new TravellerRefusal.SignedByAnother(step.id(), step.signedBy()))
                .when(!step.isInspectionPoint() && !c.signer().has(role),
                        () -> new TravellerRefusal.RoleMissing(c.signer().badge(), List.of(role)))
                .addAll(c.objections())
                .addAll(binObjections(step, c.origin().at()))
                .orElse(() -> signed(step, c));
    }

    Decision<TravellerEvent> stamp(StampStep c) {
        Optional<Step> found = procedure.find(c.step());
        if (found.isEmpty()) {
            return unknown(c.step());
        }
        Step step = found.get();
        return new Broken()
                .addAll(unfinished(step))
                .addAll(notEntitled(step, c.signer()))
                .addAll(c.objections())
                .orElse(() -> stamped(step, c));
    }

    Decision<TravellerEvent> reject(RejectStep c) {
        Optional<Step> found = procedure.find(c.step());
        if (found.isEmpty()) {
            return unknown(c.step());
        }
        Step step = found.get();
        return new Broken()
                .add(outOfTurn(step))
                .when(traveller.isInQuarantine(), this::quarantine)
                .addAll(notEntitled(step, c.signer()))
                .addAll(c.objections())
                .when(c.reason().isBlank(), TravellerRefusal.ReasonMissing::new)
                .when(!LotRules.has(traveller, c.pieces()),
                        () -> new TravellerRefusal.NoSuchPieces(c.pieces(), traveller.pieces()))
                .orElse(() -> List.of(new TravellerEvent.NonconformanceOpened(c.origin(),
                        traveller.nextNonconformance(), Nonconformance.Cause.INSPECTION_REJECTED, step.id(),
                        traveller.pass(step.id()), c.pieces().stream().sorted().distinct().toList(), c.reason(),
                        Optional.of(new Signature(c.signer(), Meaning.REJECTED)))));
    }

    private List<TravellerEvent> signed(Step step, SignStep c) {
        List<TravellerEvent> events = new ArrayList<>();
        events.add(new TravellerEvent.StepSigned(c.origin(), step.id(),
                new Signature(c.signer(), Meaning.PERFORMED), c.loadWith().stream().sorted().toList()));
        if (procedure.window().openedBy().equals(step.id())) {
            events.add(new TravellerEvent.WindowOpened(c.origin(), procedure.window().limits()));
        }
        if (step.kind() == StepKind.PASS_IN) {
            events.add(new TravellerEvent.PassedIn(c.origin()));
        }
        if (procedure.window().closedBy().equals(step.id()) && traveller.window() instanceof Window.Open) {
            events.add(new TravellerEvent.WindowEnded(c.origin(), WindowEnd.PASSED_IN));
        }
        if (isLast(step)) {
            events.add(new TravellerEvent.Closed(c.origin()));
        }
        return events;
    }

    private List<TravellerEvent> stamped(Step step, StampStep c) {
        List<TravellerEvent> events = new ArrayList<>();
        if (traveller.run(step.id()).isEmpty()) {
            events.add(new TravellerEvent.StepStarted(c.origin(), step.id(), Optional.empty(), true, step.gloves(),
                    List.of()));
        }
        events.add(new TravellerEvent.StepStamped(c.origin(), step.id(),
                new Signature(c.signer(), Meaning.INSPECTED), c.remark().strip()));
        if (isLast(step)) {
            events.add(new TravellerEvent.Closed(c.origin()));
        }
        return events;
    }

    private List<TravellerRefusal> unfinished(Step step) {
        List<TravellerRefusal> refusals = new ArrayList<>();
        outOfTurn(step).ifPresent(refusals::add);
        if (traveller.isInQuarantine()) {
            refusals.add(quarantine());
        }
        Optional<StepRun> run = traveller.run(step.id());
        boolean implied = step.isInspectionPoint() && step.readings().isEmpty() && step.hold().isEmpty();
        if (run.isEmpty() && !implied) {
            refusals.add(new TravellerRefusal.NotStarted(step.id()));
        }
        run.ifPresent(begun -> refusals.addAll(missing(step, begun)));
        return refusals;
    }

    private static List<TravellerRefusal> missing(Step step, StepRun run) {
        List<TravellerRefusal> refusals = new ArrayList<>();
        if (step.hold().isPresent() && run.holdBegunAt().isEmpty()) {
            refusals.add(new TravellerRefusal.HoldNotBegun(step.id()));
        } else if (run.isHolding()) {
            refusals.add(new TravellerRefusal.HoldStillRunning(step.id()));
        }
        step.readings().stream().filter(spec -> run.reading(spec.id()).isEmpty())
                .forEach(spec -> refusals.add(new TravellerRefusal.ReadingMissing(step.id(), spec.id())));
        return refusals;
    }

    private Optional<TravellerRefusal> outOfTurn(Step step) {
        Optional<StepRun> run = traveller.run(step.id()).filter(StepRun::isSigned);
        if (run.isPresent()) {
            return Optional.of(new TravellerRefusal.AlreadySigned(step.id(),
                    run.get().signature().orElseThrow().signer().name(), run.get().signedAt().orElseThrow()));
        }
        return traveller.currentStep().filter(current -> !current.equals(step.id()))
                .map(current -> new TravellerRefusal.NotThisStepYet(step.id(), current));
    }

    private List<TravellerRefusal> binObjections(Step step, Moment now) {
        List<TravellerRefusal> refusals = new ArrayList<>();
        new BinRules(traveller, procedure).unfitFor(step).ifPresent(refusals::add);
        if (step.kind() == StepKind.PASS_IN) {
            refusals.addAll(PassIn.objections(traveller, procedure, now));
        } else {
            traveller.placement()
                    .filter(where -> where.binClass() == BinClass.SEALED_BAG && !where.closed())
                    .ifPresent(where -> refusals.add(new TravellerRefusal.BinNotClosed(where.bin(), where.binClass())));
        }
        return refusals;
    }

    private List<TravellerRefusal> notEntitled(Step step, Signer signer) {
        List<TravellerRefusal> refusals = new ArrayList<>();
        if (!step.isInspectionPoint()) {
            refusals.add(new TravellerRefusal.SignedByAnother(step.id(), step.signedBy()));
        }
        if (!signer.has(Role.INSPECTOR)) {
            refusals.add(new TravellerRefusal.RoleMissing(signer.badge(), List.of(Role.INSPECTOR)));
        }
        if (signer.stamp().isEmpty()) {
            refusals.add(new TravellerRefusal.NoStamp(signer.badge()));
        }
        ownWork(step, signer).ifPresent(refusals::add);
        return refusals;
    }

    private Optional<TravellerRefusal> ownWork(Step inspection, Signer signer) {
        for (int i = procedure.position(inspection.id()) - 1; i >= 0; i--) {
            Step step = procedure.steps().get(i);
            if (step.isInspectionPoint()) {
                return Optional.empty();
            }
            if (traveller.run(step.id()).flatMap(StepRun::signature)
                    .filter(mark -> mark.signer().badge().equals(signer.badge())).isPresent()) {
                return Optional.of(new TravellerRefusal.InspectsOwnWork(signer.badge(), step.id()));
            }
        }
        return Optional.empty();
    }

    private boolean isLast(Step step) {
        return procedure.position(step.id()) == procedure.steps().size() - 1;
    }

    private TravellerRefusal quarantine() {
        return new TravellerRefusal.InQuarantine(traveller.id(),
                traveller.openNonconformances().stream().map(Nonconformance::number).toList());
    }

    private static Decision<TravellerEvent> unknown(StepId step) {
        return Decision.refused(List.of(new TravellerRefusal.UnknownStep(step)));
    }
}

package brightseam.traveller;

import brightseam.kernel.Decision;
import brightseam.kernel.Rules;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
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
        Optional<TravellerRefusal> second = alreadySigned(traveller, step.id());
        if (second.isPresent()) {
            return Decision.refused(List.of(second.get()));
        }
        if (step.inSession()) {
            return Decision.refused(List.of(new TravellerRefusal.ContinuesInSession(step.id())));
        }
        Role role = step.signedBy() == SignedBy.LEAD ? Role.LEAD : Role.FABRICATOR;
        return Rules.check()
                .refuseAll(unfinished(step))
                .refuseIf(step.isInspectionPoint(),
                        () -> new TravellerRefusal.SignedByAnother(step.id(), step.signedBy()))
                .refuseIf(!step.isInspectionPoint() && !c.signer().has(role),
                        () -> new TravellerRefusal.RoleMissing(c.signer().badge(), List.of(role)))
                .refuseFor(new GloveRules(traveller, procedure).against(step))
                .refuseAll(c.objections())
                .refuseAll(binObjections(step, c.origin().at()))
                .acceptWith(() -> signed(step, c));
    }

    Decision<TravellerEvent> stamp(StampStep c) {
        Optional<Step> found = procedure.find(c.step());
        if (found.isEmpty()) {
            return unknown(c.step());
        }
        Step step = found.get();
        Optional<TravellerRefusal> second = alreadySigned(traveller, step.id());
        if (second.isPresent()) {
            return Decision.refused(List.of(second.get()));
        }
        return Rules.check()
                .refuseAll(unfinished(step))
                .refuseAll(notEntitled(step, c.signer()))
                .refuseAll(c.objections())
                .refuseAll(binObjections(step, c.origin().at()))
                .acceptWith(() -> stamped(step, c));
    }

    Decision<TravellerEvent> reject(RejectStep c) {
        Optional<Step> found = procedure.find(c.step());
        if (found.isEmpty()) {
            return unknown(c.step());
        }
        Step step = found.get();
        return Rules.check()
                .refuseFor(outOfTurn(step))
                .refuseIf(traveller.isInQuarantine(), this::quarantine)
                .refuseAll(notEntitled(step, c.signer()))
                .refuseAll(c.objections())
                .refuseIf(c.reason().isBlank(), TravellerRefusal.ReasonMissing::new)
                .refuseIf(!LotRules.has(traveller, c.pieces()),
                        () -> new TravellerRefusal.NoSuchPieces(c.pieces(), traveller.pieces()))
                .acceptWith(() -> List.of(new TravellerEvent.NonconformanceOpened(c.origin(),
                        traveller.nextNonconformance(), Nonconformance.Cause.INSPECTION_REJECTED, step.id(),
                        traveller.pass(step.id()), c.pieces().stream().sorted().distinct().toList(), c.reason(),
                        Optional.of(Signature.under(traveller, procedure, c.signer(), Meaning.REJECTED)))));
    }

    private List<TravellerEvent> signed(Step step, SignStep c) {
        List<TravellerEvent> events = new ArrayList<>();
        events.add(new TravellerEvent.StepSigned(c.origin(), step.id(),
                Signature.under(traveller, procedure, c.signer(), Meaning.PERFORMED),
                c.loadWith().stream().sorted().toList()));
        events.addAll(following(step, c.origin()));
        return events;
    }

    private List<TravellerEvent> stamped(Step step, StampStep c) {
        List<TravellerEvent> events = new ArrayList<>();
        if (traveller.run(step.id()).isEmpty()) {
            events.add(new TravellerEvent.StepStarted(c.origin(), step.id(), Optional.empty(),
                    step.cautions().isEmpty(), Optional.empty(), List.of()));
        }
        events.add(new TravellerEvent.StepStamped(c.origin(), step.id(),
                Signature.under(traveller, procedure, c.signer(), Meaning.INSPECTED), c.remark().strip()));
        events.addAll(following(step, c.origin()));
        return events;
    }

    /** What a step's signature or stamp brings about: the clean window opens or ends, the lock, the end. */
    List<TravellerEvent> following(Step step, Origin origin) {
        List<TravellerEvent> events = new ArrayList<>();
        if (procedure.window().openedBy().equals(step.id())) {
            events.add(new TravellerEvent.WindowOpened(origin, procedure.window().limits()));
        }
        if (step.kind() == StepKind.PASS_IN) {
            events.add(new TravellerEvent.PassedIn(origin));
        }
        if (procedure.window().closedBy().equals(step.id()) && traveller.window() instanceof Window.Open) {
            events.add(new TravellerEvent.WindowEnded(origin,
                    step.kind() == StepKind.WELD ? WindowEnd.WELDED : WindowEnd.PASSED_IN));
        }
        if (isLast(step)) {
            events.add(new TravellerEvent.Closed(origin));
        }
        return events;
    }

    List<TravellerRefusal> unfinished(Step step) {
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

    private List<TravellerRefusal> missing(Step step, StepRun run) {
        List<TravellerRefusal> refusals = new ArrayList<>();
        if (step.hold().isPresent() && run.holdBegunAt().isEmpty()) {
            refusals.add(new TravellerRefusal.HoldNotBegun(step.id()));
        } else if (run.isHolding()) {
            refusals.add(new TravellerRefusal.HoldStillRunning(step.id()));
        } else {
            cutShort(step, run).ifPresent(refusals::add);
        }
        ReadingRules readings = new ReadingRules(traveller, procedure);
        step.readings().stream().filter(spec -> readings.isDue(run, spec))
                .forEach(spec -> refusals.add(new TravellerRefusal.ReadingMissing(step.id(), spec.id())));
        return refusals;
    }

    private static Optional<TravellerRefusal> cutShort(Step step, StepRun run) {
        return step.hold().flatMap(hold -> run.holdEndedAt()
                .filter(ended -> ended.isBefore(Course.earliestEnd(hold, run)))
                .map(ended -> new TravellerRefusal.HoldNotElapsed(step.id(), run.holdBegunAt().orElseThrow(),
                        Course.earliestEnd(hold, run), ended)));
    }

    private Optional<TravellerRefusal> outOfTurn(Step step) {
        return alreadySigned(traveller, step.id()).or(() -> traveller.currentStep()
                .filter(current -> !current.equals(step.id()))
                .map(current -> new TravellerRefusal.NotThisStepYet(step.id(), current)));
    }

    /** Who signed {@code step} and when, where somebody has; said alone, since nothing else matters to the second. */
    static Optional<TravellerRefusal> alreadySigned(Traveller traveller, StepId step) {
        return traveller.run(step).filter(StepRun::isSigned).map(run -> new TravellerRefusal.AlreadySigned(
                step, run.signature().orElseThrow().signer().name(), run.signedAt().orElseThrow()));
    }

    private List<TravellerRefusal> binObjections(Step step, Moment now) {
        List<TravellerRefusal> refusals = new ArrayList<>();
        BinRules bins = new BinRules(traveller, procedure);
        bins.unfitFor(step).or(() -> bins.uncleanAfter(step)).ifPresent(refusals::add);
        if (step.kind() == StepKind.PASS_IN) {
            refusals.addAll(PassIn.objections(traveller, procedure, step, now));
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
        return QuarantineRules.stopped(traveller);
    }

    private static Decision<TravellerEvent> unknown(StepId step) {
        return Decision.refused(List.of(new TravellerRefusal.UnknownStep(step)));
    }
}

package brightseam.traveller;

import brightseam.kernel.Decision;
import brightseam.kernel.JointId;
import brightseam.kernel.Rules;
import brightseam.kernel.StepId;
import brightseam.people.Role;
import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import brightseam.traveller.Nonconformance.Cause;
import brightseam.traveller.TravellerCommand.BeginArc;
import brightseam.traveller.TravellerCommand.JudgeJoint;
import brightseam.traveller.TravellerCommand.NoteJoint;
import brightseam.traveller.TravellerEvent.ArcBegun;
import brightseam.traveller.TravellerEvent.JointJudged;
import brightseam.traveller.TravellerEvent.JointWelded;
import brightseam.traveller.TravellerEvent.NonconformanceOpened;
import brightseam.traveller.TravellerEvent.StepStarted;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * When an arc may begin on pieces of a traveller, and what follows from what the meters and the inspector say of a
 * joint. What has been hot is always written down, in quarantine and after the end too.
 */
final class JointRules {

    private final Traveller traveller;
    private final Procedure procedure;

    JointRules(Traveller traveller, Procedure procedure) {
        this.traveller = traveller;
        this.procedure = procedure;
    }

    /**
     * The first arc at all begins the weld step. Whether another arc burns is for the joints to say: what the meters
     * proved of it comes in seconds after its end, and pieces of one lot are welded at several joints.
     */
    Decision<TravellerEvent> begin(BeginArc c) {
        Optional<Step> found = ChamberRules.inSession(procedure, StepKind.WELD);
        if (found.isEmpty()) {
            return Decision.refused(List.of(new TravellerRefusal.NotWeldedByProcedure(
                    traveller.id(), procedure.ref().label())));
        }
        Step step = found.get();
        Optional<TravellerRefusal> second = SignRules.alreadySigned(traveller, step.id());
        if (second.isPresent()) {
            return Decision.refused(List.of(second.get()));
        }
        JointId joint = c.arc().joint();
        List<Integer> named = named(c.arc().parts());
        return Rules.check()
                .refuseFor(traveller.currentStep().filter(current -> !current.equals(step.id()))
                        .map(current -> new TravellerRefusal.NotThisStepYet(step.id(), current)))
                .refuseIf(traveller.isInQuarantine(), () -> QuarantineRules.stopped(traveller))
                .refuseIf(traveller.phase() == Phase.PASSED_IN
                                && !traveller.session().equals(Optional.of(c.arc().session())),
                        () -> new TravellerRefusal.NotInThatSession(traveller.id(), c.arc().session()))
                .refuseIf(isFirstArc(joint, step) && !isWindowOpen(),
                        () -> new TravellerRefusal.WindowOverInside(traveller.id(), joint))
                .refuseIf(!traveller.pieces().containsAll(named),
                        () -> new TravellerRefusal.NoSuchPieces(named, traveller.pieces()))
                .acceptWith(() -> begun(step, c));
    }

    private List<TravellerEvent> begun(Step step, BeginArc c) {
        List<TravellerEvent> events = new ArrayList<>();
        if (traveller.run(step.id()).isEmpty()) {
            events.add(new StepStarted(c.origin(), step.id(), Optional.of(c.arc().chamber()), true, step.gloves(),
                    List.of()));
        }
        events.add(new ArcBegun(c.origin(), step.id(), traveller.pass(step.id()), c.arc()));
        return events;
    }

    /** Before the first arc of a joint its faces have to be clean; a run that goes on with it finds them welded. */
    private boolean isFirstArc(JointId joint, Step step) {
        return traveller.arcs().stream()
                .noneMatch(arc -> arc.joint().equals(joint) && arc.pass() == traveller.pass(step.id()));
    }

    private boolean isWindowOpen() {
        return traveller.window() instanceof Window.Open;
    }

    /** A run is reported to the end of its arc and again to the end of its cooling; the same once more is nothing. */
    Decision<TravellerEvent> note(NoteJoint c) {
        JointFact joint = c.joint();
        Optional<ArcRun> known = traveller.arcs().stream().filter(arc -> arc.is(joint.joint(), joint.run()))
                .findFirst();
        if (known.flatMap(ArcRun::provenUntil).filter(until -> !until.isBefore(joint.hotUntil())).isPresent()) {
            return Decision.accepted(List.of());
        }
        StepId step = weldStep();
        int pass = known.map(ArcRun::pass).orElseGet(() -> traveller.pass(step));
        List<TravellerEvent> events = new ArrayList<>();
        events.add(new JointWelded(c.origin(), step, pass, joint));
        List<Integer> pieces = concerned(known.map(ArcRun::pieces).orElseGet(() -> named(joint.parts())));
        if (!pieces.isEmpty() && joint.exceedsLimit()) {
            events.add(new NonconformanceOpened(c.origin(), traveller.nextNonconformance(), Cause.JOINT_EXCURSION,
                    step, pass, pieces, JointTexts.excursion(joint), Optional.empty()));
        }
        if (!pieces.isEmpty() && !joint.proven()) {
            events.add(new NonconformanceOpened(c.origin(), traveller.after(events).nextNonconformance(),
                    Cause.JOINT_UNPROVEN, step, pass, pieces, JointTexts.unproven(joint), Optional.empty()));
        }
        return Decision.accepted(events);
    }

    /** Whoever welded a joint does not judge it. */
    Decision<TravellerEvent> judge(JudgeJoint c) {
        JudgedFact verdict = c.verdict();
        Optional<ArcRun> known = traveller.arcs().stream().filter(arc -> arc.is(verdict.joint(), verdict.run()))
                .findFirst();
        StepId step = judgedAt();
        return Rules.check()
                .refuseIf(!c.signer().has(Role.INSPECTOR),
                        () -> new TravellerRefusal.RoleMissing(c.signer().badge(), List.of(Role.INSPECTOR)))
                .refuseIf(c.signer().stamp().isEmpty(), () -> new TravellerRefusal.NoStamp(c.signer().badge()))
                .refuseIf(known.filter(arc -> arc.welder().equals(c.signer().badge())).isPresent(),
                        () -> new TravellerRefusal.InspectsOwnWork(c.signer().badge(), weldStep()))
                .refuseFor(known.filter(ArcRun::isBurning).map(arc ->
                        new TravellerRefusal.ArcStillBurning(arc.joint(), arc.begunAt())))
                .acceptWith(() -> judged(step, c, known));
    }

    private List<TravellerEvent> judged(StepId step, JudgeJoint c, Optional<ArcRun> known) {
        Signature signature = Signature.under(traveller, procedure, c.signer(),
                c.verdict().accepted() ? Meaning.INSPECTED : Meaning.REJECTED);
        List<TravellerEvent> events = new ArrayList<>();
        events.add(new JointJudged(c.origin(), step, c.verdict(), signature));
        List<Integer> pieces = concerned(known.map(ArcRun::pieces).orElseGet(() -> named(c.verdict().parts())));
        if (!c.verdict().accepted() && !pieces.isEmpty()) {
            events.add(new NonconformanceOpened(c.origin(), traveller.nextNonconformance(), Cause.JOINT_REJECTED,
                    step, traveller.pass(step), pieces, JointTexts.rejected(c.verdict()), Optional.of(signature)));
        }
        return events;
    }

    /** The inspection that is at hand behind welding; before that the welding itself. */
    private StepId judgedAt() {
        StepId weld = weldStep();
        return traveller.currentStep().map(procedure::step)
                .filter(step -> step.isInspectionPoint() && procedure.position(step.id()) > procedure.position(weld))
                .map(Step::id).orElse(weld);
    }

    /** Where the procedure has no such step, the one that nothing comes behind. */
    private StepId weldStep() {
        return ChamberRules.inSession(procedure, StepKind.WELD).map(Step::id)
                .orElse(procedure.route().getLast());
    }

    private List<Integer> named(List<Joined> parts) {
        return parts.stream().filter(part -> part.traveller().equals(traveller.id()))
                .flatMap(part -> part.pieces().stream()).toList();
    }

    private List<Integer> concerned(List<Integer> named) {
        return named.isEmpty() ? traveller.pieces()
                : named.stream().filter(traveller.pieces()::contains).sorted().toList();
    }
}

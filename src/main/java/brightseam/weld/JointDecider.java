package brightseam.weld;

import brightseam.kernel.Decision;
import brightseam.kernel.JointId;
import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.Rules;
import brightseam.kernel.TravellerId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Decides what a {@link JointCommand} does to a joint. */
public final class JointDecider {

    private JointDecider() {}

    /** The events that follow from {@code command}, or everything that stands against it. */
    public static Decision<JointEvent> decide(Optional<Joint> joint, JointCommand command) {
        return switch (command) {
            case JointCommand.StartArc c -> start(joint, c);
            case JointCommand.StopArc c -> joint.flatMap(Joint::running)
                    .<Decision<JointEvent>>map(arc -> Decision.accepted(List.of(
                            new JointEvent.ArcStopped(c.origin(), c.joint(), arc.run()))))
                    .orElseGet(() -> refused(new ArcRefusal.NoArcRunning(c.joint())));
            case JointCommand.TakeEvidence c -> joint.map(known -> take(known, c))
                    .orElseGet(() -> refused(new ArcRefusal.EvidenceNotOwed(c.joint(), c.run(), c.stretch())));
            case JointCommand.Judge c -> joint.map(known -> judge(known, c))
                    .orElseGet(() -> refused(new JudgeRefusal.NotWelded(c.joint())));
        };
    }

    /** Everything that stands against an arc on {@code joint} at {@code now}; empty where it may be struck. */
    public static List<Refusal> objections(
            JointId id, Optional<Joint> joint, ArcPurpose purpose, ArcFacts facts, Moment now) {
        return new ArcRules(id, joint, purpose, facts, now).objections();
    }

    private static Decision<JointEvent> refused(JointRefusal refusal) {
        return Decision.refused(List.of(refusal));
    }

    private static Decision<JointEvent> start(Optional<Joint> joint, JointCommand.StartArc c) {
        ArcRules rules = new ArcRules(c.joint(), joint, c.purpose(), c.facts(), c.origin().at());
        return Rules.check().refuseAll(rules.objections())
                .acceptWith(() -> started(joint, c, rules.planned().orElseThrow()));
    }

    private static List<JointEvent> started(
            Optional<Joint> joint, JointCommand.StartArc c, WeldMap.Planned planned) {
        List<JointEvent> events = new ArrayList<>();
        if (joint.isEmpty()) {
            events.add(new JointEvent.Begun(c.origin(), c.joint(), planned.issue(), planned.joint()));
        }
        int run = joint.map(known -> known.arcs().size()).orElse(0) + 1;
        events.add(new JointEvent.ArcStarted(
                c.origin(), c.joint(), run, c.purpose(), setting(c.facts(), planned.joint())));
        return events;
    }

    private static ArcSetting setting(ArcFacts facts, MapJoint plan) {
        ChamberFact chamber = facts.chamber().orElseThrow();
        List<TravellerId> travellers = facts.parts().stream().flatMap(part -> part.traveller().stream()).toList();
        return new ArcSetting(chamber.session(), chamber.chamber(), facts.welder().badge(), facts.welder().name(),
                facts.welder().qualifiedUntil(ArcRules.QUALIFICATION), facts.filler().map(FillerFact::label),
                plan.backSide(), facts.backSide().oxygen(), chamber.oxygen().orElseThrow(), chamber.moisture(),
                chamber.argon().orElseThrow(), travellers, chamber.longestGap(), chamber.simulated());
    }

    private static Decision<JointEvent> take(Joint joint, JointCommand.TakeEvidence c) {
        boolean owed = joint.owed(c.origin().at()).stream()
                .anyMatch(one -> one.run() == c.run() && one.stretch() == c.stretch());
        return owed ? Decision.accepted(List.of(new JointEvent.EvidenceTaken(
                        c.origin(), c.joint(), c.run(), c.stretch(), c.evidence())))
                : refused(new ArcRefusal.EvidenceNotOwed(c.joint(), c.run(), c.stretch()));
    }

    private static Decision<JointEvent> judge(Joint joint, JointCommand.Judge c) {
        JudgeRules rules = new JudgeRules(joint, c);
        return Rules.check().refuseAll(rules.objections())
                .acceptWith(() -> List.of(new JointEvent.Judged(c.origin(), c.joint(), rules.judgement())));
    }
}

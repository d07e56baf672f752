package brightseam.weld;

import brightseam.kernel.JointId;
import brightseam.kernel.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One joint from its first arc on.
 *
 * @param id its name
 * @param issue the issue of the weld map that it is welded to
 * @param plan what that issue says of it; a later issue does not change it
 * @param arcs in order, at least one once anything can be asked
 * @param judgements in order
 */
public record Joint(JointId id, int issue, MapJoint plan, List<Arc> arcs, List<Judgement> judgements) {

    /**
     * A stretch of time whose readings have not been looked at.
     *
     * @param run of which arc
     * @param stretch which part
     * @param from its beginning
     * @param to its end, without the time that the meter takes to answer
     */
    public record Owed(int run, HotStretch stretch, Moment from, Moment to) {}

    /** Copies the lists. */
    public Joint {
        arcs = List.copyOf(arcs);
        judgements = List.copyOf(judgements);
    }

    /** The joint after {@code event}; {@code before} is empty for the first one only. */
    public static Joint evolve(Optional<Joint> before, JointEvent event) {
        return JointFold.evolve(before, event);
    }

    /** The last arc. */
    public Optional<Arc> lastArc() {
        return arcs.isEmpty() ? Optional.empty() : Optional.of(arcs.getLast());
    }

    /** The arc that runs. */
    public Optional<Arc> running() {
        return lastArc().filter(Arc::isRunning);
    }

    /** When it is cool after its last arc; empty while an arc runs. */
    public Optional<Moment> coolAt() {
        return lastArc().flatMap(Arc::stoppedAt).map(stopped -> stopped.plus(plan.cooling().hold()));
    }

    /** Whether it must not leave the argon at {@code now}. */
    public boolean isHot(Moment now) {
        return running().isPresent() || coolAt().filter(now::isBefore).isPresent();
    }

    /** The judgement of it as it is now; one that was given before the last arc counts no more. */
    public Optional<Judgement> judgement() {
        return judgements.isEmpty() ? Optional.empty()
                : Optional.of(judgements.getLast()).filter(last -> last.afterRun() == arcs.size());
    }

    /** Whether a pass of the weld, or its repair, has ended. */
    public boolean isWelded() {
        return arcs.stream().anyMatch(arc -> arc.purpose() != ArcPurpose.TACK && !arc.isRunning());
    }

    /** How often it was repaired; a repair that goes on before the joint has cooled is the same one. */
    public int repairs() {
        int count = 0;
        for (int i = 0; i < arcs.size(); i++) {
            boolean repair = arcs.get(i).purpose() == ArcPurpose.REPAIR;
            boolean goesOn = i > 0 && arcs.get(i - 1).purpose() == ArcPurpose.REPAIR
                    && arcs.get(i).hotFrom().isBefore(arcs.get(i).startedAt());
            count += repair && !goesOn ? 1 : 0;
        }
        return count;
    }

    /** Whether some evidence of it leaves a doubt. */
    public boolean isDoubtful() {
        return arcs.stream().anyMatch(Arc::isDoubtful);
    }

    /** What has to be looked at in the readings by {@code now}, in order. */
    public List<Owed> owed(Moment now) {
        List<Owed> owed = new ArrayList<>();
        for (Arc arc : arcs) {
            if (!arc.isRunning() && arc.evidence().isEmpty()) {
                owed.add(new Owed(arc.run(), HotStretch.ARC, arc.hotFrom(), arc.stoppedAt().orElseThrow()));
            }
            cooling(arc).filter(one -> arc.cooling().isEmpty() && !now.isBefore(one.to())).ifPresent(owed::add);
        }
        return owed;
    }

    /** Whether it is cool and everything that its readings prove is known. */
    public boolean isSettled() {
        return arcs.stream().allMatch(arc -> arc.evidence().isPresent()
                && (arc.cooling().isPresent() || cooling(arc).isEmpty()));
    }

    /** How far it has come at {@code now}. */
    public JointStanding standing(Moment now) {
        if (arcs.isEmpty()) {
            return JointStanding.PLANNED;
        }
        if (running().isPresent()) {
            return JointStanding.ARC_RUNNING;
        }
        if (judgement().isPresent()) {
            return judgement().orElseThrow().verdict() == Verdict.ACCEPT
                    ? JointStanding.ACCEPTED : JointStanding.REJECTED;
        }
        if (isHot(now)) {
            return JointStanding.COOLING;
        }
        if (!owed(now).isEmpty()) {
            return JointStanding.SETTLING;
        }
        return isWelded() ? JointStanding.WELDED : JointStanding.TACKED;
    }

    /** The time that it cools after {@code arc}; none where the next arc came before it was cool. */
    private Optional<Owed> cooling(Arc arc) {
        boolean overtaken = arcs.stream().anyMatch(next -> next.run() == arc.run() + 1
                && next.hotFrom().isBefore(next.startedAt()));
        return arc.stoppedAt().filter(stopped -> !overtaken && !plan.cooling().hold().isZero())
                .map(stopped -> new Owed(
                        arc.run(), HotStretch.COOLING, stopped, stopped.plus(plan.cooling().hold())));
    }
}

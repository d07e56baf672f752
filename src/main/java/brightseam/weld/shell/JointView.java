package brightseam.weld.shell;

import brightseam.kernel.JointId;
import brightseam.kernel.Moment;
import brightseam.weld.Arc;
import brightseam.weld.Joint;
import brightseam.weld.JointStanding;
import brightseam.weld.Judgement;
import brightseam.weld.MapJoint;
import java.util.Optional;

/**
 * One joint as screens show it.
 *
 * @param id its name
 * @param issue the issue of the map that it follows
 * @param plan what that issue says of it
 * @param joint what was done to it; empty before the first arc
 * @param now the moment that all of this holds at
 */
public record JointView(JointId id, int issue, MapJoint plan, Optional<Joint> joint, Moment now) {

    /** How far it has come. */
    public JointStanding standing() {
        return joint.map(state -> state.standing(now)).orElse(JointStanding.PLANNED);
    }

    /** The arc that runs, with when it was begun. */
    public Optional<Arc> running() {
        return joint.flatMap(Joint::running);
    }

    /** Until when it has to stay in the argon; empty where it is cool, or an arc runs. */
    public Optional<Moment> coolingUntil() {
        return joint.flatMap(Joint::coolAt).filter(now::isBefore);
    }

    /** Whether some evidence of it leaves a doubt. */
    public boolean isDoubtful() {
        return joint.filter(Joint::isDoubtful).isPresent();
    }

    /** The judgement of it as it is now. */
    public Optional<Judgement> judgement() {
        return joint.flatMap(Joint::judgement);
    }
}

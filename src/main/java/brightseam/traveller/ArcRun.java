package brightseam.traveller;

import brightseam.kernel.BadgeId;
import brightseam.kernel.JointId;
import brightseam.kernel.Moment;
import brightseam.kernel.SessionId;
import java.util.List;
import java.util.Optional;

/**
 * One run of a joint that pieces of a traveller are part of.
 *
 * @param joint which joint
 * @param session in which chamber session
 * @param run which run of the joint, from 1
 * @param pass in which passage of the traveller's weld step
 * @param pieces which pieces of this traveller
 * @param welder whose badge
 * @param begunAt when the arc began
 * @param endedAt when it ended; empty while nothing has been proven of it
 * @param provenUntil how far what the meters proved reaches
 */
public record ArcRun(JointId joint, SessionId session, int run, int pass, List<Integer> pieces, BadgeId welder,
        Moment begunAt, Optional<Moment> endedAt, Optional<Moment> provenUntil) {

    /** Whether it burns, as far as anybody has said. */
    public boolean isBurning() {
        return endedAt.isEmpty();
    }

    boolean is(JointId other, int otherRun) {
        return joint.equals(other) && run == otherRun;
    }

    ArcRun ended(Moment at, Moment proven) {
        return new ArcRun(joint, session, run, pass, pieces, welder, begunAt, Optional.of(at), Optional.of(proven));
    }
}

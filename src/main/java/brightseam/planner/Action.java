package brightseam.planner;

import brightseam.kernel.BadgeId;
import brightseam.kernel.StationId;

/**
 * One thing that hands do in a plan.
 *
 * @param person whose hands
 * @param basket the basket's label
 * @param kind what they do
 * @param stage the stage it belongs to; for a carry the stage that it goes to
 * @param from where it begins
 * @param to where it ends
 * @param startSeconds when it begins
 * @param endSeconds when the hands are free again, or go on with the next
 */
public record Action(
        BadgeId person,
        String basket,
        Kind kind,
        int stage,
        StationId from,
        StationId to,
        int startSeconds,
        int endSeconds) {

    /** What hands do. */
    public enum Kind {
        /** Lift out of where the basket is, let it drip, carry it to the stage's station. */
        CARRY,
        /** Put it in. */
        LOWER,
        /** Stay with it through the whole hold. */
        ATTEND,
        /** Lift it out of its last stage and let it drip. */
        LIFT_OUT
    }
}

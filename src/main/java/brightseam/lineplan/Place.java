package brightseam.lineplan;

import java.time.Duration;

/**
 * What a class of station on the cleaning line asks of hands and how much it takes.
 *
 * @param station the class, such as {@code pickle-tank}
 * @param positionMetres where the first of them stands along the line
 * @param baskets how many baskets one of them takes at once, where its own record does not say
 * @param lower hands' work until the hold begins: readings, then lowering
 * @param lift hands' work to lift a basket out
 * @param drip how long it drains before it is carried off
 * @param work how long hands take for a step there; zero where the hold alone counts
 * @param workEach hands' work for each further traveller of the load
 * @param attended whether hands stay all through
 * @param waits whether a basket may stand beside it before the step
 */
public record Place(
        String station,
        double positionMetres,
        int baskets,
        Duration lower,
        Duration lift,
        Duration drip,
        Duration work,
        Duration workEach,
        boolean attended,
        boolean waits) {

    /** Refuses room for nothing and times below zero. */
    public Place {
        if (baskets < 1 || lower.isNegative() || lift.isNegative() || drip.isNegative() || work.isNegative()
                || workEach.isNegative()) {
            throw new IllegalArgumentException(station + ": room for one basket, and no time below zero");
        }
    }
}

package brightseam.planner;

import brightseam.kernel.StationId;

/**
 * A station of the line that takes baskets: a tank, a dryer, a bench.
 *
 * @param id its label
 * @param capacityBaskets how many baskets it takes at once, from the start of lowering to the end of dripping
 * @param isLocked whether nothing may go in; what is in it comes out all the same
 */
public record Tank(StationId id, int capacityBaskets, boolean isLocked) {

    /** Refuses a tank without room. */
    public Tank {
        if (capacityBaskets < 1) {
            throw new IllegalArgumentException(id + ": room for one basket at least");
        }
    }
}

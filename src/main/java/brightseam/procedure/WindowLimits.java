package brightseam.procedure;

import java.time.Duration;

/**
 * The clean window's length by handling state.
 *
 * @param open in the open, or in a bin that is not closed
 * @param closedCleanBin in a closed clean bin
 * @param sealedBag in a sealed bag
 */
public record WindowLimits(Duration open, Duration closedCleanBin, Duration sealedBag) {

    /** Refuses lengths that are not above zero, and better handling with a shorter window. */
    public WindowLimits {
        if (open.isNegative() || open.isZero() || open.compareTo(closedCleanBin) > 0
                || closedCleanBin.compareTo(sealedBag) > 0) {
            throw new IllegalArgumentException("clean window: 0 < open <= closed clean bin <= sealed bag");
        }
    }
}

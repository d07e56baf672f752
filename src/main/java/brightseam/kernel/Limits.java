package brightseam.kernel;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * A closed range that a number must lie in; either end may be missing, then that side has no limit.
 *
 * <p>Compared as decimals and unrounded (the absolute method of ASTM E29, from memory).
 */
public record Limits(Optional<BigDecimal> minimum, Optional<BigDecimal> maximum) {

    /** Refuses a maximum below the minimum. */
    public Limits {
        if (minimum.isPresent() && maximum.isPresent() && maximum.get().compareTo(minimum.get()) < 0) {
            throw new IllegalArgumentException("maximum below minimum");
        }
    }

    /** No limit on either side. */
    public static Limits none() {
        return new Limits(Optional.empty(), Optional.empty());
    }

    /** Whether {@code value} lies inside, ends included. */
    public boolean admits(BigDecimal value) {
        return minimum.map(low -> value.compareTo(low) >= 0).orElse(true)
                && maximum.map(high -> value.compareTo(high) <= 0).orElse(true);
    }
}

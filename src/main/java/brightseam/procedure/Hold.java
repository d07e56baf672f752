package brightseam.procedure;

import java.time.Duration;
import java.util.Optional;

/**
 * A time that a step must last.
 *
 * @param minimum at least this long; zero where only a maximum is set
 * @param maximum at most this long, where longer does harm
 */
public record Hold(Duration minimum, Optional<Duration> maximum) {

    /** Refuses a negative minimum and a maximum that is not above the minimum. */
    public Hold {
        if (minimum.isNegative() || maximum.filter(longest -> longest.compareTo(minimum) <= 0).isPresent()) {
            throw new IllegalArgumentException("a hold's maximum lies above its minimum, which is not negative");
        }
    }
}

package brightseam.procedure;

import java.time.Duration;

/**
 * The longest time allowed from the end of a step (of its hold, where it has one) to the start of the next.
 *
 * @param maximum above zero
 * @param reason why it matters, for the bench, such as "acid dries on and keeps etching"
 */
public record Gap(Duration maximum, String reason) {

    /** Refuses a maximum that is not above zero. */
    public Gap {
        if (maximum.isNegative() || maximum.isZero()) {
            throw new IllegalArgumentException("a gap's maximum lies above zero");
        }
    }
}

package brightseam.device;

import java.util.Set;

/**
 * One reading.
 *
 * @param elapsedMillis when it was taken, on the shop's elapsed time line
 * @param value in the unit of the meter's quantity; finite
 * @param quality what is to be said of it; empty: good
 */
public record Reading(long elapsedMillis, double value, Set<Quality> quality) {

    /** Refuses a time below zero and a value that is no number. Minus zero becomes zero. */
    public Reading {
        if (elapsedMillis < 0 || !Double.isFinite(value)) {
            throw new IllegalArgumentException("a reading has a time from zero and a finite value");
        }
        value = value + 0.0;
        quality = Quality.of(Quality.bits(quality));
    }

    /** A reading of which nothing is to be said. */
    public Reading(long elapsedMillis, double value) {
        this(elapsedMillis, value, Set.of());
    }

    /** The same reading, with {@code more} said of it. */
    public Reading with(Set<Quality> more) {
        return new Reading(elapsedMillis, value, Quality.of(Quality.bits(quality) | Quality.bits(more)));
    }

    /** Whether it still proves something. */
    public boolean isUsable() {
        return Quality.isUsable(Quality.bits(quality));
    }
}

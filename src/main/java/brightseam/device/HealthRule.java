package brightseam.device;

import java.time.Duration;

/**
 * When a meter is in trouble.
 *
 * @param silentAfterReadings it is silent once this many readings are missing, each {@code every} apart
 * @param frozenAfter it is frozen once it has given the very same value for longer than this: a live meter's noise is
 *     wider than its resolution, so that it does not stand still for so long. Zero: never, for quantities that may
 *     stand still, such as a level
 * @param lateAfter a reading is late that comes in this long after it was taken
 * @param clockOffMax how far the device's clock may be from the shop's before that is said
 */
public record HealthRule(int silentAfterReadings, Duration frozenAfter, Duration lateAfter, Duration clockOffMax) {

    /** Common practice of data loggers, no published source; each is a field of the meter's register. */
    public static final HealthRule USUAL =
            new HealthRule(5, Duration.ofMinutes(2), Duration.ofSeconds(10), Duration.ofSeconds(5));

    /** Refuses what cannot be. */
    public HealthRule {
        if (silentAfterReadings < 1 || frozenAfter.isNegative() || lateAfter.isNegative()
                || clockOffMax.isNegative()) {
            throw new IllegalArgumentException("missing readings from 1, times from zero");
        }
    }
}

package brightseam.chamber;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Optional;

/**
 * How a transfer lock is purged.
 *
 * @param kind by a stream of argon or by pumping down and filling
 * @param leastTime the least time that argon streams through it; of a sweep only
 * @param lowPressureBarAbsolute how far it is pumped down in each cycle, above 0 and below 1; of cycles only
 */
public record LockMethod(Kind kind, Optional<Duration> leastTime, Optional<BigDecimal> lowPressureBarAbsolute) {

    /** Which way. */
    public enum Kind {
        /** Argon streams through until the air is thinned out. */
        SWEEP,
        /** It is pumped down and filled with argon, as often as is needed. */
        VACUUM_CYCLES
    }

    /** Refuses a sweep without its time and cycles without a pressure that can be. */
    public LockMethod {
        boolean fits = switch (kind) {
            case SWEEP -> leastTime.filter(Duration::isPositive).isPresent() && lowPressureBarAbsolute.isEmpty();
            case VACUUM_CYCLES -> leastTime.isEmpty() && lowPressureBarAbsolute.filter(bar ->
                    bar.signum() > 0 && bar.compareTo(BigDecimal.ONE) < 0).isPresent();
        };
        if (!fits) {
            throw new IllegalArgumentException(
                    "lock: a sweep needs its least time, cycles a low pressure above 0 and below 1 bar absolute");
        }
    }

    /** A stream of argon for at least {@code leastTime}. */
    public static LockMethod sweep(Duration leastTime) {
        return new LockMethod(Kind.SWEEP, Optional.of(leastTime), Optional.empty());
    }

    /** Pumped down to {@code lowPressureBarAbsolute} and filled with argon. */
    public static LockMethod vacuumCycles(BigDecimal lowPressureBarAbsolute) {
        return new LockMethod(Kind.VACUUM_CYCLES, Optional.empty(), Optional.of(lowPressureBarAbsolute));
    }
}

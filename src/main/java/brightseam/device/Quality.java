package brightseam.device;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** What is to be said of one reading. A reading of which nothing is to be said is good. Kept as bits: append only. */
public enum Quality {
    /** At an end of the meter's range or beyond. */
    OUT_OF_RANGE(false),
    /** The meter had given the very same value for too long. */
    FROZEN(false),
    /** The meter's calibration was over. */
    UNCALIBRATED(false),
    /**
     * It came in too late, or after its stretch was settled; evidence leaves it out, so that what was once computed
     * can be computed again.
     */
    LATE(false),
    /** A person typed it. */
    TYPED(true),
    /** A program made it up. */
    SIMULATED(true),
    /** The device's clock was far from the shop's; its time was set right by the difference. */
    CLOCK_OFF(true);

    private static final Quality[] ALL = values();
    private static final List<Set<Quality>> SETS = IntStream.range(0, 1 << ALL.length).mapToObj(Quality::made).toList();
    private static final int UNUSABLE_BITS = bits(EnumSet.of(OUT_OF_RANGE, FROZEN, UNCALIBRATED, LATE));

    private final boolean usable;

    Quality(boolean usable) {
        this.usable = usable;
    }

    /** Whether a reading of which this is said still proves something. */
    public boolean isUsable() {
        return usable;
    }

    /** {@code flags} as bits, the first constant lowest. */
    public static int bits(Set<Quality> flags) {
        int bits = 0;
        for (Quality flag : flags) {
            bits |= 1 << flag.ordinal();
        }
        return bits;
    }

    /** The flags of {@code bits}, unmodifiable. */
    public static Set<Quality> of(int bits) {
        return SETS.get(bits);
    }

    /** Whether a reading with {@code bits} still proves something. */
    static boolean isUsable(int bits) {
        return (bits & UNUSABLE_BITS) == 0;
    }

    private static Set<Quality> made(int bits) {
        EnumSet<Quality> flags = EnumSet.noneOf(Quality.class);
        for (Quality flag : ALL) {
            if ((bits & 1 << flag.ordinal()) != 0) {
                flags.add(flag);
            }
        }
        return Collections.unmodifiableSet(flags);
    }
}

package brightseam.device;

import java.util.Arrays;
import java.util.List;

/** Readings of one meter in order of time; several may have the same time. Immutable. */
public final class Series {

    private static final Series EMPTY = new Series(new long[0], new double[0], new byte[0]);

    private final long[] millis;
    private final double[] values;
    private final byte[] flags;

    private Series(long[] millis, double[] values, byte[] flags) {
        this.millis = millis;
        this.values = values;
        this.flags = flags;
    }

    /** A series without a reading. */
    public static Series empty() {
        return EMPTY;
    }

    /** {@code readings}, in order of time; readings of the same time keep their order. */
    public static Series of(List<Reading> readings) {
        SeriesBuilder builder = new SeriesBuilder(readings.size());
        readings.forEach(builder::add);
        return builder.build();
    }

    /** Takes the arrays as they are; for makers in this package that give them away, in order of time. */
    static Series owning(long[] millis, double[] values, byte[] flags) {
        return new Series(millis, values, flags);
    }

    /** How many readings. */
    public int size() {
        return millis.length;
    }

    /** Whether there is none. */
    public boolean isEmpty() {
        return millis.length == 0;
    }

    /** When reading {@code index} was taken, on the elapsed time line. */
    public long millis(int index) {
        return millis[index];
    }

    /** The value of reading {@code index}. */
    public double value(int index) {
        return values[index];
    }

    /** What is to be said of reading {@code index}, as the bits of {@link Quality#of}. */
    public int flags(int index) {
        return flags[index];
    }

    /** Reading {@code index}. */
    public Reading at(int index) {
        return new Reading(millis[index], values[index], Quality.of(flags[index]));
    }

    /** Whether reading {@code index} still proves something. */
    public boolean isUsable(int index) {
        return Quality.isUsable(flags[index]);
    }

    /** Whether any reading was made up by a program. */
    public boolean isSimulated() {
        int bit = 1 << Quality.SIMULATED.ordinal();
        for (byte flag : flags) {
            if ((flag & bit) != 0) {
                return true;
            }
        }
        return false;
    }

    /** The readings from {@code fromMillis} to {@code toMillis}, both ends included. */
    public Series between(long fromMillis, long toMillis) {
        int start = firstAt(fromMillis);
        int end = Math.max(start, firstAt(toMillis + 1));
        return start == 0 && end == size() ? this : new Series(Arrays.copyOfRange(millis, start, end),
                Arrays.copyOfRange(values, start, end), Arrays.copyOfRange(flags, start, end));
    }

    /** The index of the first reading at {@code time} or later; the size where there is none. */
    public int firstAt(long time) {
        int low = 0;
        int high = millis.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (millis[middle] < time) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Series series && Arrays.equals(millis, series.millis)
                && Arrays.equals(values, series.values) && Arrays.equals(flags, series.flags);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(millis) * 31 + Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        return isEmpty() ? "no readings" : size() + " readings, " + millis[0] + " to " + millis[size() - 1] + " ms";
    }
}

package brightseam.device;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** Collects readings and makes a {@link Series} of them. For one thread. */
public final class SeriesBuilder {

    private static final int CAPACITY_MIN = 16;

    private long[] millis;
    private double[] values;
    private byte[] flags;
    private int size;
    private boolean sorted = true;

    /** Room for {@code expected} readings at first. */
    public SeriesBuilder(int expected) {
        int capacity = Math.max(CAPACITY_MIN, expected);
        millis = new long[capacity];
        values = new double[capacity];
        flags = new byte[capacity];
    }

    /** Adds {@code reading}. */
    public SeriesBuilder add(Reading reading) {
        return add(reading.elapsedMillis(), reading.value(), Quality.bits(reading.quality()));
    }

    /** Adds one reading by its parts; see {@link Series#flags}. */
    public SeriesBuilder add(long elapsedMillis, double value, int bits) {
        if (size == millis.length) {
            grow(size * 2);
        }
        sorted &= size == 0 || millis[size - 1] <= elapsedMillis;
        millis[size] = elapsedMillis;
        values[size] = value;
        flags[size++] = (byte) bits;
        return this;
    }

    /** Adds every reading of {@code series}. */
    public SeriesBuilder add(Series series) {
        for (int i = 0; i < series.size(); i++) {
            add(series.millis(i), series.value(i), series.flags(i));
        }
        return this;
    }

    /** How many were added. */
    public int size() {
        return size;
    }

    /** The readings added so far, in order of time; those of the same time in the order in which they were added. */
    public Series build() {
        return buildFrom(0);
    }

    /** The same without the {@code index} readings that were added first. */
    public Series buildFrom(int index) {
        if (size == index) {
            return Series.empty();
        }
        long[] times = Arrays.copyOfRange(millis, index, size);
        double[] all = Arrays.copyOfRange(values, index, size);
        byte[] bits = Arrays.copyOfRange(flags, index, size);
        if (!sorted) {
            int[] order = IntStream.range(index, size).boxed().sorted(Comparator.comparingLong(i -> millis[i]))
                    .mapToInt(Integer::intValue).toArray();
            for (int i = 0; i < order.length; i++) {
                times[i] = millis[order[i]];
                all[i] = values[order[i]];
                bits[i] = flags[order[i]];
            }
        }
        return Series.owning(times, all, bits);
    }

    /** Forgets the {@code count} readings that were added first. */
    public void forget(int count) {
        int rest = size - count;
        System.arraycopy(millis, count, millis, 0, rest);
        System.arraycopy(values, count, values, 0, rest);
        System.arraycopy(flags, count, flags, 0, rest);
        size = rest;
        sorted |= rest <= 1;
    }

    private void grow(int capacity) {
        millis = Arrays.copyOf(millis, capacity);
        values = Arrays.copyOf(values, capacity);
        flags = Arrays.copyOf(flags, capacity);
    }
}

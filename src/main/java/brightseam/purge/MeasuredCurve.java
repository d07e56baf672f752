package brightseam.purge;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** Readings of one meter during one purge, in the order of their time. */
public final class MeasuredCurve {

    private final double[] seconds;
    private final double[] ppm;

    private MeasuredCurve(double[] seconds, double[] ppm) {
        this.seconds = seconds;
        this.ppm = ppm;
    }

    /**
     * Readings in any order; those that are no numbers are left out, and the arrays are copied.
     *
     * @param seconds of each reading, on any clock that does not jump; {@link PurgeRun} uses the same
     * @param ppm of each reading, zero and below included
     * @throws IllegalArgumentException where there are not as many of the one as of the other
     */
    public static MeasuredCurve of(double[] seconds, double[] ppm) {
        if (seconds.length != ppm.length) {
            throw new IllegalArgumentException(seconds.length + " times for " + ppm.length + " readings");
        }
        int[] order = IntStream.range(0, ppm.length)
                .filter(i -> Double.isFinite(seconds[i]) && Double.isFinite(ppm[i]))
                .boxed()
                .sorted(Comparator.comparingDouble(i -> seconds[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        return new MeasuredCurve(
                Arrays.stream(order).mapToDouble(i -> seconds[i]).toArray(),
                Arrays.stream(order).mapToDouble(i -> ppm[i]).toArray());
    }

    /** How many readings there are. */
    public int size() {
        return ppm.length;
    }

    /** The time of reading {@code index}. */
    public double seconds(int index) {
        return seconds[index];
    }

    /** The value of reading {@code index}. */
    public double ppm(int index) {
        return ppm[index];
    }
}

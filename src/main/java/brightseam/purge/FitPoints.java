package brightseam.purge;

import java.util.Arrays;

/**
 * A measured curve made small: up to some 240 means in equal times, on the meter's own scale of noise.
 *
 * <p>Left out: readings at the end of the meter's range and what came before the last of them, and the old beginning,
 * more than a thousand times above where the curve is now; how it started says nothing of how it ends.
 *
 * @param minutes mean time of each, from the first one's zero
 * @param scaled mean of each on the scale of {@link MeterTraits#scale}
 * @param sigma standard deviation of each on that scale
 * @param startSeconds the time of zero minutes
 */
record FitPoints(double[] minutes, double[] scaled, double[] sigma, double startSeconds) {

    private static final int BUCKETS = 240;
    private static final double WINDOW_FACTOR = 1000;
    private static final int LATEST = 15;

    static FitPoints of(MeasuredCurve curve, MeterTraits meter) {
        int first = first(curve, meter);
        int count = curve.size() - first;
        if (count <= 0) {
            return new FitPoints(new double[0], new double[0], new double[0], 0);
        }
        double start = curve.seconds(first);
        double width = Math.max((curve.seconds(curve.size() - 1) - start) / BUCKETS, 1e-6);
        double[] time = new double[BUCKETS + 1];
        double[] sum = new double[BUCKETS + 1];
        int[] counted = new int[BUCKETS + 1];
        for (int i = first; i < curve.size(); i++) {
            int bucket = Math.min(BUCKETS, (int) ((curve.seconds(i) - start) / width));
            time[bucket] += curve.seconds(i) - start;
            sum[bucket] += meter.scale(curve.ppm(i));
            counted[bucket]++;
        }
        return means(time, sum, counted, meter, start);
    }

    private static FitPoints means(double[] time, double[] sum, int[] counted, MeterTraits meter, double start) {
        int filled = (int) Arrays.stream(counted).filter(count -> count > 0).count();
        double[] minutes = new double[filled];
        double[] scaled = new double[filled];
        double[] sigma = new double[filled];
        int at = 0;
        for (int bucket = 0; bucket < counted.length; bucket++) {
            if (counted[bucket] > 0) {
                minutes[at] = time[bucket] / counted[bucket] / 60;
                scaled[at] = sum[bucket] / counted[bucket];
                sigma[at] = Math.sqrt(1.0 / counted[bucket] + meter.roundingVariance(meter.ppm(scaled[at])));
                at++;
            }
        }
        return new FitPoints(minutes, scaled, sigma, start);
    }

    int size() {
        return minutes.length;
    }

    /** The mean of the scaled values from point {@code from} to before point {@code to}, in ppm. */
    double meanPpm(int from, int to, MeterTraits meter) {
        return meter.ppm(Arrays.stream(scaled, Math.max(0, from), Math.min(size(), to)).average().orElse(0));
    }

    private static int first(MeasuredCurve curve, MeterTraits meter) {
        int size = curve.size();
        double[] latest = new double[Math.min(LATEST, size)];
        for (int i = 0; i < latest.length; i++) {
            latest[i] = curve.ppm(size - 1 - i);
        }
        Arrays.sort(latest);
        double now = latest.length == 0 ? 0 : Math.max(latest[latest.length / 2], 1);
        int first = size;
        while (first > 0 && curve.ppm(first - 1) < meter.highestPpm() && curve.ppm(first - 1) < WINDOW_FACTOR * now) {
            first--;
        }
        return first;
    }
}

package brightseam.purge;

/**
 * What has to be known of a meter to weigh its readings.
 *
 * <p>Its noise grows with the reading: sigma^2 = noisePpm^2 + (noiseShare y)^2. A fit checks this against the scatter
 * that it finds, so rough numbers do.
 *
 * @param resolutionPpm its last digit
 * @param noisePpm standard deviation near zero
 * @param noiseShare standard deviation as a share of the reading, higher up
 * @param t90Seconds how long it takes to show nine tenths of a step, as makers state it (common practice); first order
 * @param highestPpm from where on it shows no more; such readings are left out
 */
public record MeterTraits(
        double resolutionPpm, double noisePpm, double noiseShare, double t90Seconds, double highestPpm) {

    private static final double SECONDS_PER_MINUTE = 60;
    /** Quieter than this no meter is believed to be, because the mixing itself is not steadier. */
    private static final double SHARE_MIN = 0.002;
    private static final double PPM_MIN = 1e-3;

    /** Refuses numbers below zero, noise above the reading itself, and a range without an end above zero. */
    public MeterTraits {
        Quantity.between("resolution in ppm", resolutionPpm, 0, 1e5);
        Quantity.between("noise in ppm", noisePpm, 0, 1e5);
        Quantity.between("noise as a share", noiseShare, 0, 1);
        Quantity.between("response in s", t90Seconds, 0, 3600);
        Quantity.positive("highest reading in ppm", highestPpm, 1e6);
    }

    /** A meter of which nothing else is known: noise of half a digit and 1 %, any range (common practice). */
    public static MeterTraits of(double resolutionPpm, double t90Seconds) {
        return new MeterTraits(resolutionPpm, resolutionPpm / 2, 0.01, t90Seconds, 1e6);
    }

    /** The time constant of its lag in minutes: t90 / ln 10. */
    double lagMinutes() {
        return t90Seconds / Math.log(10) / SECONDS_PER_MINUTE;
    }

    /**
     * The scale on which its noise is 1 everywhere: asinh(share y / floor) / share, which is logarithmic far up and
     * linear near zero, where a reading may be zero or below.
     */
    double scale(double ppm) {
        double x = share() * ppm / floor();
        double magnitude = Math.abs(x);
        double asinh = Math.log(magnitude + Math.sqrt(magnitude * magnitude + 1));
        return Math.copySign(asinh, x) / share();
    }

    /** The inverse of {@link #scale}. */
    double ppm(double scale) {
        double x = Math.max(-40, Math.min(40, scale * share()));
        return floor() / share() * Math.sinh(x);
    }

    /** Variance of one reading's rounding to the last digit, in units of its noise. */
    double roundingVariance(double ppm) {
        double variance = floor() * floor() + share() * share() * ppm * ppm;
        return resolutionPpm * resolutionPpm / 12 / variance;
    }

    private double share() {
        return Math.max(noiseShare, SHARE_MIN);
    }

    private double floor() {
        return Math.max(Math.max(noisePpm, resolutionPpm / 4), PPM_MIN);
    }
}

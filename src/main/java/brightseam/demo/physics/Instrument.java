package brightseam.demo.physics;

/**
 * What a gauge makes of the value that it has followed to: noise, steps of its display, ends of its range. The noise
 * comes from the seed and the time of the reading alone, so it does not depend on what was read before.
 *
 * @param seed sets its noise apart from that of other gauges
 * @param noise standard deviation near zero, in the unit of the value
 * @param relativeNoise standard deviation as a share of the value, added in squares
 * @param resolution one step of its display; zero for none
 * @param low the lowest that it can show
 * @param high the highest that it can show
 */
public record Instrument(long seed, double noise, double relativeNoise, double resolution, double low, double high) {

    /** Refuses an empty range and negative noise or resolution. */
    public Instrument {
        if (!(low < high) || !(noise >= 0) || !(relativeNoise >= 0) || !(resolution >= 0)) {
            throw new IllegalArgumentException("no instrument: " + low + " to " + high);
        }
    }

    /** What it shows at {@code elapsedMillis} of {@code value}. */
    public double shows(double value, long elapsedMillis) {
        double spread = Math.hypot(noise, relativeNoise * value);
        double noisy = value + spread * normal(elapsedMillis);
        double stepped = resolution > 0 ? Math.rint(noisy / resolution) * resolution : noisy;
        return Math.clamp(stepped, low, high);
    }

    /** A normal deviate of the seed and the time, by the polar form's older sibling (Box and Muller 1958). */
    private double normal(long elapsedMillis) {
        long first = scrambled(seed * 0x9E3779B97F4A7C15L + elapsedMillis);
        long second = scrambled(first + 0x9E3779B97F4A7C15L);
        double radius = Math.sqrt(-2 * Math.log(unit(first)));
        return radius * Math.cos(2 * Math.PI * unit(second));
    }

    private static double unit(long bits) {
        return ((bits >>> 11) + 0.5) * 0x1.0p-53;
    }

    /** Steele, Lea and Flood 2014, figure 17: the mixing of SplitMix64 (from memory). */
    private static long scrambled(long seed) {
        long mixed = (seed ^ (seed >>> 30)) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
        return mixed ^ (mixed >>> 31);
    }
}

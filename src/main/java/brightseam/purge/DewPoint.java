package brightseam.purge;

import java.util.function.DoubleUnaryOperator;

/**
 * The temperature at which the water in a gas would condense or freeze out, with the phase that it would form.
 *
 * <p>Pressures of saturated vapour follow Murphy and Koop, Q. J. R. Meteorol. Soc. 131 (2005) 1539, their equation 7
 * over ice and 10 over (supercooled) water; coefficients from memory. Parts per million are of all molecules,
 * {@code 1e6 e(t) / p}. The gas is ideal: the enhancement factor, below 0.5 % at one atmosphere and a few percent at
 * 7 bar, is left out. Over supercooled water the same reading is up to 80 % more water than over ice, so the phase that
 * an instrument shows has to be known; mirrors below 0 degC usually carry ice.
 *
 * @param celsius dew point or frost point, in degC
 * @param phase what forms at that temperature
 */
public record DewPoint(double celsius, Phase phase) {

    /** The lowest temperature of both equations: 123 K over water, 110 K over ice. */
    public static final double CELSIUS_MIN = -150;
    /** The highest temperature of the equation over water, 332 K. */
    public static final double CELSIUS_MAX = 58;

    private static final double KELVIN = 273.15;
    /** The triple point of water, 273.16 K; no ice above it. */
    private static final double TRIPLE_CELSIUS = 0.01;
    private static final double PASCAL_PER_BAR = 1e5;

    /** What the water becomes: frost point over ICE, dew point over WATER. */
    public enum Phase {
        /** Frost. */
        ICE,
        /** Dew; below 0 degC supercooled. */
        WATER
    }

    /** Refuses temperatures outside -150 to 58 degC, and ice above 0.01 degC. */
    public DewPoint {
        double most = phase == Phase.ICE ? TRIPLE_CELSIUS : CELSIUS_MAX;
        Quantity.between("dew point over " + phase + " in degC", celsius, CELSIUS_MIN, most);
    }

    /** A reading of a meter that shows the frost point below 0 degC and the dew point above. */
    public static DewPoint read(double celsius) {
        return new DewPoint(celsius, celsius <= 0 ? Phase.ICE : Phase.WATER);
    }

    /**
     * The inverse of {@link #ppm}: found by bisection, to a millionth of a degree.
     *
     * @throws IllegalArgumentException where so much water has no dew point from -150 to 58 degC, or no frost point
     */
    public static DewPoint ofPpm(double ppm, double pressureBarAbsolute, Phase phase) {
        double low = CELSIUS_MIN;
        double high = phase == Phase.ICE ? TRIPLE_CELSIUS : CELSIUS_MAX;
        DoubleUnaryOperator water = celsius -> new DewPoint(celsius, phase).ppm(pressureBarAbsolute);
        Quantity.between("moisture in ppm", ppm, water.applyAsDouble(low), water.applyAsDouble(high));
        while (high - low > 1e-6) {
            double middle = (low + high) / 2;
            if (water.applyAsDouble(middle) < ppm) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new DewPoint((low + high) / 2, phase);
    }

    /** Over ice where the frost point lies at or below 0 degC, over water otherwise. */
    public static DewPoint ofPpm(double ppm, double pressureBarAbsolute) {
        double freezing = new DewPoint(0, Phase.ICE).ppm(pressureBarAbsolute);
        return ofPpm(ppm, pressureBarAbsolute, ppm <= freezing ? Phase.ICE : Phase.WATER);
    }

    /** Water in ppm of all molecules of a gas at {@code pressureBarAbsolute}; 1e6 is nothing but water. */
    public double ppm(double pressureBarAbsolute) {
        Quantity.positive("pressure in bar absolute", pressureBarAbsolute, 500);
        return 1e6 * vapourPascal() / (pressureBarAbsolute * PASCAL_PER_BAR);
    }

    /** The pressure of saturated vapour at this temperature over this phase, in Pa. */
    public double vapourPascal() {
        double kelvin = celsius + KELVIN;
        return switch (phase) {
            case ICE -> overIce(kelvin);
            case WATER -> overWater(kelvin);
        };
    }

    /** The same gas at another pressure: compressed gas has a higher dew point with the same ppm. */
    public DewPoint at(double fromBarAbsolute, double toBarAbsolute) {
        return ofPpm(ppm(fromBarAbsolute), toBarAbsolute);
    }

    private static double overIce(double kelvin) {
        return Math.exp(9.550426 - 5723.265 / kelvin + 3.53068 * Math.log(kelvin) - 0.00728332 * kelvin);
    }

    private static double overWater(double kelvin) {
        double logarithm = Math.log(kelvin);
        double warm = 54.842763 - 6763.22 / kelvin - 4.210 * logarithm + 0.000367 * kelvin;
        double cold = 53.878 - 1331.22 / kelvin - 9.44523 * logarithm + 0.014025 * kelvin;
        return Math.exp(warm + Math.tanh(0.0415 * (kelvin - 218.8)) * cold);
    }
}

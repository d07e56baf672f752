package brightseam.demo.physics;

/**
 * Frost point and moisture at one atmosphere, by the Magnus form over ice, 611.2 exp(22.46 t / (272.62 + t)) Pa
 * (Sonntag 1990, from memory); it reads 0.9 % low at -80 °C.
 */
public final class Frost {

    private static final double ATMOSPHERE_PASCAL = 101_325;
    private static final double AT_ZERO_PASCAL = 611.2;
    private static final double FACTOR = 22.46;
    private static final double OFFSET_CELSIUS = 272.62;
    private static final double PER_MILLION = 1e6;
    private static final double PPM_MIN = 1e-3;

    private Frost() {}

    /** The frost point of gas with {@code ppm} of water by volume, in °C; drier than 0.001 ppm counts as that. */
    public static double celsius(double ppm) {
        double pascal = Math.max(ppm, PPM_MIN) * ATMOSPHERE_PASCAL / PER_MILLION;
        double ratio = Math.log(pascal / AT_ZERO_PASCAL);
        return OFFSET_CELSIUS * ratio / (FACTOR - ratio);
    }
}

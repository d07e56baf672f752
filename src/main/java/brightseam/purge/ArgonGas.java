package brightseam.purge;

/**
 * Argon as the real gas that it is, above its critical temperature.
 *
 * <p>The residual Helmholtz energy of Tegeler, Span and Wagner, J. Phys. Chem. Ref. Data 28 (1999) 779, 41 terms, with
 * that paper's gas constant, molar mass and critical point: density uncertain by 0.02 % up to 12 MPa and 0.03 % up to
 * 30 MPa at workshop temperatures. The coefficients were taken from the data file for argon of CoolProp, an open
 * library of fluid properties, and are checked against the states that it states.
 */
public final class ArgonGas {

    /** Molar mass in kg/mol. */
    public static final double KILOGRAMS_PER_MOLE = 0.039948;
    /** The lowest temperature that is answered, well above the critical -122.5 degC, so that there is one density. */
    public static final double CELSIUS_MIN = -100;
    /** The highest temperature that is answered. */
    public static final double CELSIUS_MAX = 200;
    /** The highest pressure that is answered; cylinders are filled to 300 bar. */
    public static final double BAR_MAX = 1000;

    /** In L bar / (mol K): the paper's 8.31451 J/(mol K). */
    private static final double GAS_CONSTANT = 0.0831451;
    private static final double KELVIN = 273.15;
    private static final double CRITICAL_KELVIN = 150.687;
    private static final double CRITICAL_MOLES_PER_LITRE = 13.40742965855612;
    /** Above any density below 1000 bar: 35.5 mol/L is the liquid at its triple point. */
    private static final double MOLES_PER_LITRE_MAX = 45;

    /** Each row n, power of density, power of 1/T, power of density inside the exponential (0 for none). */
    private static final double[][] POWERS = {
        {0.088722304990011, 1, 0, 0}, {0.70514805167298, 1, 0.25, 0}, {-1.682011565409, 1, 1, 0},
        {-0.14909014431486, 1, 2.75, 0}, {-0.1202480460094, 1, 4, 0}, {-0.12164978798599, 2, 0, 0},
        {0.40035933626752, 2, 0.25, 0}, {-0.27136062699129, 2, 0.75, 0}, {0.24211924579645, 2, 2.75, 0},
        {0.005788958318557, 3, 0, 0}, {-0.041097335615341, 3, 2, 0}, {0.024710761541614, 4, 0.75, 0},
        {-0.32181391750702, 1, 3, 1}, {0.33230017695794, 1, 3.5, 1}, {0.031019986287345, 3, 1, 1},
        {-0.030777086002437, 4, 2, 1}, {0.093891137419581, 4, 4, 1}, {-0.090643210682031, 5, 3, 1},
        {-0.00045778349276654, 7, 0, 1}, {-8.2659729025197e-05, 10, 0.5, 1}, {0.00013013415603147, 10, 1, 1},
        {-0.011397840001996, 2, 1, 2}, {-0.024455169960535, 2, 7, 2}, {-0.064324067175955, 4, 5, 2},
        {0.058889471093674, 4, 6, 2}, {-0.00064933552112965, 8, 6, 2}, {-0.013889862158435, 3, 10, 3},
        {0.4048983929691, 5, 13, 3}, {-0.38612519594749, 5, 14, 3}, {-0.18817142332233, 6, 11, 3},
        {0.15977647596482, 6, 14, 3}, {0.053985518513856, 7, 8, 3}, {-0.028953417958014, 7, 14, 3},
        {-0.013025413381384, 8, 6, 3}, {0.0028948696775778, 9, 7, 3}, {-0.0022647134304796, 5, 24, 4},
        {0.0017616456196368, 6, 22, 4},
    };

    /** Each row n, power of density, power of 1/T, beta, gamma; eta is 20 and epsilon 1 in all of them. */
    private static final double[][] BELLS = {
        {0.0058552454482774, 2, 3, 250, 1.11}, {-0.69251908270028, 1, 1, 375, 1.14},
        {1.5315490030516, 2, 0, 300, 1.17}, {-0.0027380447449783, 3, 0, 225, 1.11},
    };
    private static final double BELL_ETA = 20;

    private ArgonGas() {}

    /** Compressibility Z = p / (rho R T); 1 for an ideal gas. */
    public static double compressibility(double pressureBarAbsolute, double temperatureCelsius) {
        return pressureBarAbsolute / (molesPerLitre(pressureBarAbsolute, temperatureCelsius) * GAS_CONSTANT
                * (temperatureCelsius + KELVIN));
    }

    /** Density in kg/m3, which is the same number in g/L. */
    public static double kilogramsPerCubicMetre(double pressureBarAbsolute, double temperatureCelsius) {
        return molesPerLitre(pressureBarAbsolute, temperatureCelsius) * KILOGRAMS_PER_MOLE * 1000;
    }

    /**
     * Density in mol/L: the equation gives the pressure of a density, which is inverted between bounds by false
     * position (Illinois), to twelve digits.
     *
     * @throws IllegalArgumentException outside 0 to 1000 bar and -100 to 200 degC
     */
    public static double molesPerLitre(double pressureBarAbsolute, double temperatureCelsius) {
        Quantity.positive("pressure in bar absolute", pressureBarAbsolute, BAR_MAX);
        Quantity.between("temperature in degC", temperatureCelsius, CELSIUS_MIN, CELSIUS_MAX);
        double kelvin = temperatureCelsius + KELVIN;
        double low = 0;
        double high = MOLES_PER_LITRE_MAX;
        double below = -pressureBarAbsolute;
        double above = bar(high, kelvin) - pressureBarAbsolute;
        double density = Math.min(pressureBarAbsolute / (GAS_CONSTANT * kelvin), MOLES_PER_LITRE_MAX / 2);
        for (int step = 0; step < 200; step++) {
            double miss = bar(density, kelvin) - pressureBarAbsolute;
            if (Math.abs(miss) <= 1e-12 * pressureBarAbsolute) {
                break;
            }
            if (miss < 0) {
                low = density;
                below = miss;
                above /= 2;
            } else {
                high = density;
                above = miss;
                below /= 2;
            }
            density = low + (high - low) * below / (below - above);
        }
        return density;
    }

    /** The pressure of a density, in bar absolute: rho R T (1 + delta d(alpha_r)/d(delta)). */
    static double bar(double molesPerLitre, double kelvin) {
        double delta = molesPerLitre / CRITICAL_MOLES_PER_LITRE;
        double tau = CRITICAL_KELVIN / kelvin;
        double z = 1;
        for (double[] row : POWERS) {
            double inside = row[3] == 0 ? 0 : Math.pow(delta, row[3]);
            z += row[0] * Math.pow(delta, row[1]) * Math.pow(tau, row[2]) * Math.exp(-inside)
                    * (row[1] - row[3] * inside);
        }
        for (double[] row : BELLS) {
            double bell = Math.exp(-BELL_ETA * (delta - 1) * (delta - 1) - row[3] * (tau - row[4]) * (tau - row[4]));
            z += row[0] * Math.pow(delta, row[1]) * Math.pow(tau, row[2]) * bell
                    * (row[1] - 2 * BELL_ETA * delta * (delta - 1));
        }
        return molesPerLitre * GAS_CONSTANT * kelvin * z;
    }
}

package brightseam.purge;

/**
 * Litres of argon at 15 degC and one atmosphere: the one measure for what flows, is used and is left.
 *
 * <p>Reference conditions of ISO 13443 (from memory). The volume is that of the real gas, 0.07 % smaller than ideal.
 */
public final class StandardLitres {

    /** The reference temperature. */
    public static final double CELSIUS = 15;
    /** The reference pressure. */
    public static final double BAR_ABSOLUTE = RoomAir.ATMOSPHERE_BAR;
    /** Moles in one standard litre: 0.0423. */
    public static final double MOLES_EACH = ArgonGas.molesPerLitre(BAR_ABSOLUTE, CELSIUS);

    private StandardLitres() {}

    /** {@code litres} of argon at a pressure and a temperature, in standard litres. */
    public static double of(double litres, double pressureBarAbsolute, double temperatureCelsius) {
        Quantity.notNegative("gas in L", litres, 1e12);
        return litres * ArgonGas.molesPerLitre(pressureBarAbsolute, temperatureCelsius) / MOLES_EACH;
    }

    /** {@code moles} of argon in standard litres. */
    public static double ofMoles(double moles) {
        return moles / MOLES_EACH;
    }

    /** {@code kilograms} of argon in standard litres. */
    public static double ofKilograms(double kilograms) {
        return ofMoles(kilograms / ArgonGas.KILOGRAMS_PER_MOLE);
    }

    /** The mass of {@code standardLitres} in kilograms. */
    public static double kilograms(double standardLitres) {
        return standardLitres * MOLES_EACH * ArgonGas.KILOGRAMS_PER_MOLE;
    }

    /** What {@code standardLitres} of argon fill at a pressure and a temperature, in litres. */
    public static double litresAt(double standardLitres, double pressureBarAbsolute, double temperatureCelsius) {
        return standardLitres * MOLES_EACH / ArgonGas.molesPerLitre(pressureBarAbsolute, temperatureCelsius);
    }
}

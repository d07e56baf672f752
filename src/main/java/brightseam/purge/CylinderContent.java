package brightseam.purge;

/**
 * The argon in a high-pressure cylinder, from its gauge, as a real gas: an ideal one would under-read by some 6 % at
 * 200 bar.
 *
 * @param waterLitres the cylinder's own volume, as stamped on its shoulder
 * @param pressureBarGauge above the room's one atmosphere
 * @param temperatureCelsius of the cylinder, not of the room it came into a minute ago
 */
public record CylinderContent(double waterLitres, double pressureBarGauge, double temperatureCelsius) {

    /** The highest pressure that is taken for one of a cylinder, in bar gauge. */
    public static final double BAR_GAUGE_MAX = 500;

    /** Refuses no volume or above 3000 L, gauges outside 0 to 500 bar, and temperatures outside -50 to 100 degC. */
    public CylinderContent {
        Quantity.positive("water volume in L", waterLitres, 3000);
        Quantity.between("pressure in bar gauge", pressureBarGauge, 0, BAR_GAUGE_MAX);
        Quantity.between("temperature in degC", temperatureCelsius, -50, 100);
    }

    /**
     * The cylinder that holds {@code standardLitres}: the inverse of {@link #standardLitres}.
     *
     * @throws IllegalArgumentException where that is less than an open cylinder holds, or more than 500 bar
     */
    public static CylinderContent holding(double standardLitres, double waterLitres, double temperatureCelsius) {
        CylinderContent low = new CylinderContent(waterLitres, 0, temperatureCelsius);
        CylinderContent high = new CylinderContent(waterLitres, BAR_GAUGE_MAX, temperatureCelsius);
        Quantity.between("content in standard L", standardLitres,
                low.standardLitres() * (1 - 1e-9), high.standardLitres());
        double barAbsolute = ArgonGas.bar(standardLitres * StandardLitres.MOLES_EACH / waterLitres,
                temperatureCelsius + CyclePurge.KELVIN);
        double gauge = Math.max(0, barAbsolute - RoomAir.ATMOSPHERE_BAR);
        return new CylinderContent(waterLitres, Math.min(gauge, BAR_GAUGE_MAX), temperatureCelsius);
    }

    /** All argon in it, what stays in an open cylinder included, in standard litres (15 degC, one atmosphere). */
    public double standardLitres() {
        return StandardLitres.of(waterLitres, pressureBarAbsolute(), temperatureCelsius);
    }

    /** All argon in it, in kilograms. */
    public double kilograms() {
        return StandardLitres.kilograms(standardLitres());
    }

    /**
     * What can be drawn until the gauge shows {@code lowestBarGauge}, in standard litres; zero where it shows less
     * already. Shops leave some pressure in, because moisture in the gas rises as a cylinder empties.
     */
    public double standardLitresDownTo(double lowestBarGauge) {
        CylinderContent left = new CylinderContent(waterLitres, lowestBarGauge, temperatureCelsius);
        return Math.max(0, standardLitres() - left.standardLitres());
    }

    /** The same argon at another temperature: what the gauge shows then. */
    public CylinderContent at(double celsius) {
        double barAbsolute = ArgonGas.bar(
                ArgonGas.molesPerLitre(pressureBarAbsolute(), temperatureCelsius), celsius + CyclePurge.KELVIN);
        return new CylinderContent(waterLitres, Math.max(0, barAbsolute - RoomAir.ATMOSPHERE_BAR), celsius);
    }

    /**
     * The cylinder after {@code standardLitres} were drawn, at the same temperature.
     *
     * @throws IllegalArgumentException where it does not hold that much
     */
    public CylinderContent after(double standardLitres) {
        Quantity.notNegative("gas drawn in standard L", standardLitres, Double.MAX_VALUE);
        return holding(standardLitres() - standardLitres, waterLitres, temperatureCelsius);
    }

    /** Compressibility of the gas in it. */
    public double compressibility() {
        return ArgonGas.compressibility(pressureBarAbsolute(), temperatureCelsius);
    }

    private double pressureBarAbsolute() {
        return pressureBarGauge + RoomAir.ATMOSPHERE_BAR;
    }
}

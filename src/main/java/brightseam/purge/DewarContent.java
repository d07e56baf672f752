package brightseam.purge;

/**
 * The argon in a dewar of liquid.
 *
 * <p>The liquid is taken at its normal boiling point; under the few bar that a dewar keeps it is up to some 10 % less
 * dense, so a level reads high then and a scale is the better meter. The gas above the liquid is left out. What boils
 * off is a share of the full dewar a day, as makers state it (common practice), and is lost only while nothing is
 * drawn: gas that is used in that time comes out of the same boiling.
 *
 * @param capacityLitres of liquid in a full dewar
 * @param levelPercent of the capacity
 * @param boilOffPercentPerDay of the capacity, while nothing is drawn
 */
public record DewarContent(double capacityLitres, double levelPercent, double boilOffPercentPerDay) {

    /** Liquid at its normal boiling point of -185.9 degC, in kg/L (a gas supplier's data sheet). */
    public static final double LIQUID_KILOGRAMS_PER_LITRE = 1.394;

    private static final double HOURS_PER_DAY = 24;

    /** Refuses no capacity or above 100 m3, levels outside 0 to 100 %, and boil-off outside 0 to 100 % a day. */
    public DewarContent {
        Quantity.positive("capacity in L", capacityLitres, 1e5);
        Quantity.between("level in %", levelPercent, 0, 100);
        Quantity.between("boil-off in % a day", boilOffPercentPerDay, 0, 100);
    }

    /** A dewar on a scale: {@code kilograms} of argon, the dewar's own mass taken off. */
    public static DewarContent ofKilograms(double kilograms, double capacityLitres, double boilOffPercentPerDay) {
        return new DewarContent(capacityLitres, 100 * kilograms / (capacityLitres * LIQUID_KILOGRAMS_PER_LITRE),
                boilOffPercentPerDay);
    }

    /** The liquid in kilograms. */
    public double kilograms() {
        return capacityLitres * levelPercent / 100 * LIQUID_KILOGRAMS_PER_LITRE;
    }

    /** The gas that the liquid becomes, in standard litres (15 degC, one atmosphere). */
    public double standardLitres() {
        return StandardLitres.ofKilograms(kilograms());
    }

    /** The dewar after it stood for {@code hours} with nothing drawn. */
    public DewarContent afterStanding(double hours) {
        Quantity.notNegative("time in h", hours, Double.MAX_VALUE);
        double lost = boilOffPercentPerDay * hours / HOURS_PER_DAY;
        return new DewarContent(capacityLitres, Math.max(0, levelPercent - lost), boilOffPercentPerDay);
    }

    /**
     * The dewar after {@code standardLitres} were drawn.
     *
     * @throws IllegalArgumentException where it does not hold that much
     */
    public DewarContent after(double standardLitres) {
        Quantity.between("gas drawn in standard L", standardLitres, 0, standardLitres());
        return ofKilograms(Math.max(0, kilograms() - StandardLitres.kilograms(standardLitres)), capacityLitres,
                boilOffPercentPerDay);
    }

    /** How long it lasts with nothing drawn, in hours; infinite where nothing boils off. */
    public double hoursStandingEmpty() {
        return levelPercent == 0 ? 0 : levelPercent / boilOffPercentPerDay * HOURS_PER_DAY;
    }

    /** What boils off in an hour, in standard litres. */
    public double boilOffStandardLitresPerHour() {
        return StandardLitres.ofKilograms(capacityLitres * LIQUID_KILOGRAMS_PER_LITRE * boilOffPercentPerDay / 100)
                / HOURS_PER_DAY;
    }
}

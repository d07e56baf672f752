package brightseam.bath;

/**
 * Depth of metal taken off one surface.
 *
 * @param micrometres per surface: a wall that is wetted on both sides loses twice as much
 */
public record Removal(double micrometres) {

    /** 1 mil is a thousandth of an inch, 25.4 micrometres by definition. */
    static final double MICROMETRES_PER_MIL = 25.4;

    /** Refuses what is below zero or above 100 mm. */
    public Removal {
        Quantity.notNegative("removal in um", micrometres, 1e5);
    }

    /** {@code mil} thousandths of an inch. */
    public static Removal ofMil(double mil) {
        return new Removal(mil * MICROMETRES_PER_MIL);
    }

    /** In thousandths of an inch. */
    public double mil() {
        return micrometres / MICROMETRES_PER_MIL;
    }

    /** Mass in grams that leaves {@code areaSquareMetres} of a metal of {@code density}: area x depth x density. */
    public double massGrams(double areaSquareMetres, Density density) {
        return areaSquareMetres * micrometres * density.gramsPerCubicCentimetre();
    }
}

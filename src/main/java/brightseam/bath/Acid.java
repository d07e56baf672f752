package brightseam.bath;

/** The two acids of a titanium pickle; molar masses from the standard atomic weights. */
public enum Acid {
    /** HNO3. */
    NITRIC(63.013, "HNO3"),
    /** HF. */
    HYDROFLUORIC(20.006, "HF");

    private final double gramsPerMole;
    private final String formula;

    Acid(double gramsPerMole, String formula) {
        this.gramsPerMole = gramsPerMole;
        this.formula = formula;
    }

    /** Molar mass in g/mol. */
    public double gramsPerMole() {
        return gramsPerMole;
    }

    /** How chemists write it. */
    public String formula() {
        return formula;
    }
}

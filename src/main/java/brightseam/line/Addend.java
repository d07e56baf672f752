package brightseam.line;

/** What can be added to a bath between two fills. */
public enum Addend {
    /** Nitric acid as its concentrate, 70 % by mass. */
    NITRIC_ACID(true),
    /** Hydrofluoric acid as its concentrate, 60 % by mass. */
    HYDROFLUORIC_ACID(true),
    /** Concentrate of the alkaline cleaner. */
    CLEANER_CONCENTRATE(true),
    /** Water from the supply, for what went off as vapour. */
    WATER(false),
    /** Deionised water, for what went off as vapour. */
    DEIONISED_WATER(false);

    private final boolean strengthens;

    Addend(boolean strengthens) {
        this.strengthens = strengthens;
    }

    /** Whether the bath has to be analysed afterwards before anything goes in. */
    public boolean strengthens() {
        return strengthens;
    }
}

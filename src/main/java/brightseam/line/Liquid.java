package brightseam.line;

/** What a tank holds; a dryer holds air. */
public enum Liquid {
    /** Hot alkaline soak cleaner. */
    ALKALINE_CLEANER,
    /** Nitric and hydrofluoric acid in water. */
    PICKLING_ACID,
    /** Running water from the supply. */
    RINSE_WATER,
    /** Deionised water. */
    DEIONISED_WATER,
    /** Warm air; the tank is a drying cabinet. */
    AIR
}

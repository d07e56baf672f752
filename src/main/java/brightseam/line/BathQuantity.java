package brightseam.line;

import java.math.BigDecimal;
import java.util.Optional;

/** What an analysis of a bath measures; each quantity has one unit for ever, since written events rely on it. */
public enum BathQuantity {
    /** Nitric acid as its concentrate (70 % by mass), per cent by volume: the form of ASTM B600-91, 4.3.2. */
    NITRIC_ACID("vol %", "0", "100"),
    /** Hydrofluoric acid as its concentrate (60 % by mass), per cent by volume: the form of ASTM B600-91, 4.3.2. */
    HYDROFLUORIC_ACID("vol %", "0", "100"),
    /** Parts of nitric acid by volume to one of hydrofluoric acid; made from the two, never entered. */
    ACID_RATIO(": 1", "0", null),
    /** Temperature of the liquid or the air. */
    TEMPERATURE("°C", "-20", "150"),
    /** Titanium that went into solution. */
    DISSOLVED_TITANIUM("g/L", "0", null),
    /** Conductivity at 25 °C. */
    CONDUCTIVITY("µS/cm", "0", null),
    /** Chloride, parts per million by mass, which is milligrams in a litre of water. */
    CHLORIDE("ppm", "0", null),
    /** Acidity. */
    PH("", "0", "14"),
    /** Strength of the cleaner by its maker's own titration, per cent of concentrate. */
    CLEANER_STRENGTH("%", "0", "100");

    private final String unit;
    private final BigDecimal lowest;
    private final Optional<BigDecimal> highest;

    BathQuantity(String unit, String lowest, String highest) {
        this.unit = unit;
        this.lowest = new BigDecimal(lowest);
        this.highest = Optional.ofNullable(highest).map(BigDecimal::new);
    }

    /** The unit's symbol; empty for a plain number. */
    public String unit() {
        return unit;
    }

    /** Whether the quantity can be {@code value} at all. */
    public boolean canBe(BigDecimal value) {
        return value.compareTo(lowest) >= 0 && highest.map(most -> value.compareTo(most) <= 0).orElse(true);
    }

    /** Whether people enter it; the others are made from what they enter. */
    public boolean isEntered() {
        return this != ACID_RATIO;
    }
}

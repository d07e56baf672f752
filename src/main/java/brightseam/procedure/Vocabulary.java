package brightseam.procedure;

import brightseam.kernel.ContactKind;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The shared tables that procedures cite by key; each table names its sources in its file under {@code shared/}.
 *
 * @param stations classes of station
 * @param units units of readings
 * @param cautions what can hurt, with what to check first
 * @param gloves what hands wear
 * @param supplies what touches titanium and is scanned, by key; the gloves among it
 * @param keptAway what never comes near titanium
 * @param safetyNotice shown with every caution: local codes, data sheet and licensed practice go first
 */
public record Vocabulary(
        Map<String, StationClass> stations,
        Map<String, Unit> units,
        Map<String, Caution> cautions,
        Map<String, Glove> gloves,
        Map<String, SupplyType> supplies,
        List<KeptAway> keptAway,
        String safetyNotice) {

    /** How the unit of {@code reading} is written; empty for a look, the key itself where the table lacks it. */
    public String symbol(ReadingSpec reading) {
        return reading.isPassFail() ? ""
                : Optional.ofNullable(units.get(reading.unit())).map(Unit::symbol).orElse(reading.unit());
    }

    /** What people call supplies of {@code type}; the key itself where the table lacks it. */
    public String supplyName(String type) {
        return Optional.ofNullable(supplies.get(type)).map(SupplyType::name).orElse(type);
    }

    /**
     * A class of station, such as {@code pickle-tank}.
     *
     * @param kinds the kinds of step that are done there
     * @param acid whether its bath eats metal
     * @param cautions keys of the cautions that every step there shows
     */
    public record StationClass(String key, String name, Set<StepKind> kinds, boolean acid, List<String> cautions) {}

    /**
     * A unit of readings, such as {@code degC}.
     *
     * @param lowest the least that the quantity can be, where it has an end
     * @param highest the most that the quantity can be, where it has an end
     */
    public record Unit(
            String key,
            String symbol,
            String name,
            String quantity,
            Optional<BigDecimal> lowest,
            Optional<BigDecimal> highest) {}

    /**
     * What can hurt at a step.
     *
     * @param harm what it does
     * @param checks what to check before the start, in order
     * @param stop when to stop
     * @param firstAid a pointer to first aid; the safety data sheet goes before it
     * @param sources where this comes from, in full
     */
    public record Caution(
            String key,
            String title,
            String harm,
            List<String> checks,
            String stop,
            String firstAid,
            List<Source> sources) {}

    /**
     * A kind of gloves, such as {@code white-cotton}.
     *
     * @param cleanSide whether they may touch cleaned titanium
     * @param wear how they are worn and when they are changed
     * @param material what they are made of, a key of the table of chamber materials, where it is known
     */
    public record Glove(String key, String name, boolean cleanSide, String wear, Optional<String> material) {}

    /**
     * A type of supply, such as {@code acetone}.
     *
     * @param kind what sort of thing it is
     * @param mayTouch what such a thing may touch at all; one of them may be kept for less
     * @param material what it is made of, a key of the table of chamber materials, where it is known
     */
    public record SupplyType(
            String key, String name, ContactKind kind, Set<Surface> mayTouch, Optional<String> material) {

        /** A type of which nobody says what it is made of. */
        public SupplyType(String key, String name, ContactKind kind, Set<Surface> mayTouch) {
            this(key, name, kind, mayTouch, Optional.empty());
        }
    }

    /**
     * Something that never comes near titanium.
     *
     * @param words what it is called, in lower case
     * @param reason what it does to the metal
     */
    public record KeptAway(String key, List<String> words, String reason) {}
}

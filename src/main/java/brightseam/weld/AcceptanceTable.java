package brightseam.weld;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which colours a standard or a specification accepts.
 *
 * @param key its name on weld maps
 * @param title what it is called, with edition
 * @param sources where its rows come from, in words, and how sure they are
 * @param weld what it says of each colour on the weld, by key
 * @param edge what it says of each colour in a narrow band at the edge of the gas shield, by key
 */
public record AcceptanceTable(
        String key, String title, List<String> sources, Map<String, Row> weld, Map<String, Row> edge) {

    /**
     * What it says of one colour.
     *
     * @param ruling whether it may stay
     * @param next what has to hold, or to come next; empty for a colour that may stay
     */
    public record Row(Ruling ruling, Optional<String> next) {}

    /** Copies the collections. */
    public AcceptanceTable {
        sources = List.copyOf(sources);
        weld = Map.copyOf(weld);
        edge = Map.copyOf(edge);
    }
}

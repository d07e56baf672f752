package brightseam.weld;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The ladder of colours, the tables that judge them, the findings, and the light that is asked for.
 *
 * @param colours from the brightest to the worst
 * @param tables by what colours are judged
 * @param findings what can be seen besides
 * @param luxMin the least light to judge a joint in
 * @param luxSource where that comes from, in words
 */
public record ColourScale(List<WeldColour> colours, List<AcceptanceTable> tables, List<FindingKind> findings,
        BigDecimal luxMin, String luxSource) {

    /** Copies the lists; refuses a table that leaves a colour out or names one that is not on the ladder. */
    public ColourScale {
        colours = List.copyOf(colours);
        tables = List.copyOf(tables);
        findings = List.copyOf(findings);
        Set<String> ladder = colours.stream().map(WeldColour::key).collect(Collectors.toCollection(TreeSet::new));
        for (AcceptanceTable table : tables) {
            if (!table.weld().keySet().equals(ladder) || !table.edge().keySet().equals(ladder)) {
                throw new IllegalArgumentException(table.key() + " judges each colour of " + ladder);
            }
        }
    }

    /** The table {@code key}. */
    public Optional<AcceptanceTable> table(String key) {
        return tables.stream().filter(table -> table.key().equals(key)).findFirst();
    }

    /** The colour {@code key}. */
    public Optional<WeldColour> colour(String key) {
        return colours.stream().filter(colour -> colour.key().equals(key)).findFirst();
    }

    /** The finding {@code key}. */
    public Optional<FindingKind> finding(String key) {
        return findings.stream().filter(finding -> finding.key().equals(key)).findFirst();
    }

    /** The keys of the tables. */
    public Set<String> tableKeys() {
        return tables.stream().map(AcceptanceTable::key).collect(Collectors.toUnmodifiableSet());
    }
}

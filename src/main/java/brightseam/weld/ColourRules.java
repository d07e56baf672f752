package brightseam.weld;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Holds colours against a table: the worst colour decides. */
public final class ColourRules {

    private ColourRules() {}

    /**
     * What {@code table} says of {@code seen}.
     *
     * @throws IllegalArgumentException for a colour that the table does not know, and where no colour was seen
     */
    public static ColourVerdict judge(AcceptanceTable table, ColoursSeen seen) {
        List<Held> held = new ArrayList<>();
        seen.onTheWeld().forEach(colour -> held.add(new Held(colour, row(table, table.weld().get(colour), colour))));
        seen.bandAtTheEdge().ifPresent(band -> held.add(new Held(band, row(table, table.edge().get(band), band))));
        if (seen.onTheWeld().isEmpty()) {
            throw new IllegalArgumentException("a weld has a colour");
        }
        Ruling worst = held.stream().map(one -> one.row().ruling()).reduce(Ruling.ACCEPT, Ruling::worse);
        return switch (worst) {
            case ACCEPT -> new ColourVerdict.Accept();
            case CONDITIONAL -> new ColourVerdict.Conditional(colours(held, worst), next(held, worst));
            case REJECT -> new ColourVerdict.Reject(colours(held, worst), next(held, worst));
        };
    }

    private record Held(String colour, AcceptanceTable.Row row) {}

    private static AcceptanceTable.Row row(AcceptanceTable table, AcceptanceTable.Row row, String colour) {
        if (row == null) {
            throw new IllegalArgumentException(table.key() + " does not know " + colour);
        }
        return row;
    }

    private static List<String> colours(List<Held> held, Ruling ruling) {
        return held.stream().filter(one -> one.row().ruling() == ruling).map(Held::colour).distinct().toList();
    }

    private static List<String> next(List<Held> held, Ruling ruling) {
        Set<String> next = new LinkedHashSet<>();
        held.stream().filter(one -> one.row().ruling() == ruling).map(one -> one.row().next())
                .flatMap(Optional::stream).forEach(next::add);
        return List.copyOf(next);
    }
}

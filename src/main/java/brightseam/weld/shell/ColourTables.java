package brightseam.weld.shell;

import brightseam.procedure.Source;
import brightseam.procedure.shell.SharedTables;
import brightseam.weld.AcceptanceTable;
import brightseam.weld.ColourScale;
import brightseam.weld.FindingKind;
import brightseam.weld.Ruling;
import brightseam.weld.WeldColour;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The colour scale of {@code shared/weld-colours.yaml}, or of the shop's own file in its place. */
@Configuration
public class ColourTables {

    private record Sheet(List<Source> sources, Light light, List<WeldColour> colours, List<TableRow> tables,
            List<FindingRow> findings) {}

    private record Light(BigDecimal luxMin, List<String> sources) {}

    private record TableRow(String key, String title, List<String> sources, List<Judged> weld, List<Judged> edge) {}

    private record Judged(List<String> colours, String ruling, String next) {}

    private record FindingRow(String key, String name, String ruling, boolean forgivable, String next,
            List<String> sources) {}

    /**
     * The scale, with tables of the shop's that other parts of the program bring along.
     *
     * @throws IllegalStateException naming what is wrong where a table is broken
     */
    @Bean
    public static ColourScale colourScale(
            @Value("${brightseam.weld-colours:}") String file, ObjectProvider<AcceptanceTable> shopTables) {
        Optional<Path> own = file.isEmpty() ? Optional.empty() : Optional.of(Path.of(file));
        return read(own, shopTables.orderedStream().toList());
    }

    /** The scale of the shared table, and {@code shopTables} besides. */
    static ColourScale read(Optional<Path> file, List<AcceptanceTable> shopTables) {
        Sheet sheet = file.map(path -> SharedTables.table("weld-colours", path, Sheet.class))
                .orElseGet(() -> SharedTables.table("weld-colours", Sheet.class));
        Map<String, String> titles = sheet.sources().stream().collect(Collectors.toMap(Source::key, Source::title));
        Stream<AcceptanceTable> own = sheet.tables().stream().map(row -> new AcceptanceTable(row.key(), row.title(),
                cited(titles, row.sources()), rows(row.key(), row.weld()), rows(row.key(), row.edge())));
        return new ColourScale(sheet.colours(), Stream.concat(own, shopTables.stream()).toList(),
                sheet.findings().stream().map(row -> new FindingKind(row.key(), row.name(), ruling(row.ruling()),
                        row.forgivable(), Optional.of(row.next().strip()),
                        String.join("; ", cited(titles, row.sources())))).toList(),
                sheet.light().luxMin(), String.join("; ", cited(titles, sheet.light().sources())));
    }

    private static List<String> cited(Map<String, String> titles, List<String> keys) {
        return keys.stream().map(key -> Optional.ofNullable(titles.get(key))
                .orElseThrow(() -> new IllegalStateException("weld-colours: unknown source " + key))).toList();
    }

    private static Map<String, AcceptanceTable.Row> rows(String table, List<Judged> judged) {
        Map<String, AcceptanceTable.Row> rows = new LinkedHashMap<>();
        judged.forEach(row -> row.colours().forEach(colour -> {
            AcceptanceTable.Row made = new AcceptanceTable.Row(
                    ruling(row.ruling()), Optional.ofNullable(row.next()).map(String::strip));
            if (rows.put(colour, made) != null) {
                throw new IllegalStateException("weld-colours: " + table + " judges " + colour + " twice");
            }
        }));
        return rows;
    }

    private static Ruling ruling(String word) {
        return Ruling.valueOf(word.toUpperCase(Locale.ROOT));
    }
}

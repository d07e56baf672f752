package brightseam.procedure.shell;

import brightseam.kernel.ContactKind;
import brightseam.procedure.Source;
import brightseam.procedure.Surface;
import brightseam.procedure.Vocabulary;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads the shared tables of {@code shared/*.yaml}, each checked against its schema. */
public final class SharedTables {

    private record Stations(List<Vocabulary.StationClass> stations) {}

    private record Units(List<Vocabulary.Unit> units) {}

    private record Gloves(List<Vocabulary.Glove> gloves) {}

    private record Supplies(List<Vocabulary.SupplyType> supplies) {}

    private record KeptAwayTable(List<Vocabulary.KeptAway> keptAway) {}

    private record Cautions(String notice, List<Source> sources, List<CautionRow> cautions) {}

    private record CautionRow(
            String key,
            String title,
            String harm,
            List<String> checks,
            String stop,
            String firstAid,
            List<String> sources) {}

    private SharedTables() {}

    /**
     * The vocabulary that procedures cite.
     *
     * @throws IllegalStateException naming file, line and column where a table is broken
     */
    public static Vocabulary read() {
        Cautions cautions = table("cautions", Cautions.class);
        List<Vocabulary.Glove> gloves = table("gloves", Gloves.class).gloves();
        return new Vocabulary(
                byKey(table("stations", Stations.class).stations(), Vocabulary.StationClass::key),
                byKey(table("units", Units.class).units(), Vocabulary.Unit::key),
                byKey(cautions.cautions().stream().map(row -> caution(row, cautions.sources())).toList(),
                        Vocabulary.Caution::key),
                byKey(gloves, Vocabulary.Glove::key),
                byKey(Stream.concat(gloves.stream().map(SharedTables::supply),
                        table("supplies", Supplies.class).supplies().stream()).toList(), Vocabulary.SupplyType::key),
                table("kept-away", KeptAwayTable.class).keptAway(),
                cautions.notice().strip());
    }

    /** Gloves have a table of their own, which says how they are worn. */
    private static Vocabulary.SupplyType supply(Vocabulary.Glove glove) {
        return new Vocabulary.SupplyType(glove.key(), glove.name(), ContactKind.GLOVES,
                glove.cleanSide() ? Set.of(Surface.values()) : Set.of(Surface.UNCLEANED), glove.material());
    }

    private static Vocabulary.Caution caution(CautionRow row, List<Source> sources) {
        List<Source> cited = row.sources().stream()
                .map(key -> sources.stream().filter(source -> source.key().equals(key)).findFirst()
                        .orElseThrow(() -> new IllegalStateException("cautions.yaml: unknown source " + key)))
                .toList();
        return new Vocabulary.Caution(row.key(), row.title(), row.harm().strip(), row.checks(), row.stop().strip(),
                row.firstAid().strip(), cited);
    }

    /**
     * The table {@code shared/<name>.yaml}, checked against its schema, as a {@code type} of snake-case keys.
     *
     * @throws IllegalStateException naming file, line and column where it is broken
     */
    public static <T> T table(String name, Class<T> type) {
        return checked("shared/" + name + ".yaml", SharedFile.text(name + ".yaml"), name, type);
    }

    /**
     * The shop's own file in place of {@code shared/<name>.yaml}, checked against the same schema.
     *
     * @throws IllegalStateException naming file, line and column where it is broken, or the file where there is none
     */
    public static <T> T table(String name, Path file, Class<T> type) {
        try {
            return checked(file.toString(), FileText.read(Files.readAllBytes(file)), name, type);
        } catch (IOException unreadable) {
            throw new IllegalStateException(file + " cannot be read", unreadable);
        } catch (FaultyText broken) {
            throw new IllegalStateException(file + ": " + broken.fault(), broken);
        }
    }

    private static <T> T checked(String file, String text, String schema, Class<T> type) {
        try {
            YamlTree tree = YamlReader.read(text);
            List<Fault> faults = new SchemaCheck(schema).check(tree);
            if (!faults.isEmpty() || !tree.duplicates().isEmpty()) {
                throw new IllegalStateException(file + ": " + faults + tree.duplicates());
            }
            return TreeMapper.read(tree.root(), type);
        } catch (FaultyText broken) {
            throw new IllegalStateException(file + ": " + broken.fault(), broken);
        }
    }

    private static <T> Map<String, T> byKey(List<T> rows, Function<T, String> key) {
        return rows.stream().collect(Collectors.toMap(key, Function.identity(), (one, other) -> {
            throw new IllegalStateException("a key twice: " + one + ", " + other);
        }, LinkedHashMap::new));
    }
}

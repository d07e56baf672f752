package brightseam.procedure.shell;

import brightseam.procedure.Source;
import brightseam.procedure.Vocabulary;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Reads the shared tables of {@code shared/*.yaml}, each checked against its schema. */
public final class SharedTables {

    private record Stations(List<Vocabulary.StationClass> stations) {}

    private record Units(List<Vocabulary.Unit> units) {}

    private record Gloves(List<Vocabulary.Glove> gloves) {}

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
        return new Vocabulary(
                byKey(table("stations", Stations.class).stations(), Vocabulary.StationClass::key),
                byKey(table("units", Units.class).units(), Vocabulary.Unit::key),
                byKey(cautions.cautions().stream().map(row -> caution(row, cautions.sources())).toList(),
                        Vocabulary.Caution::key),
                byKey(table("gloves", Gloves.class).gloves(), Vocabulary.Glove::key),
                table("kept-away", KeptAwayTable.class).keptAway(),
                cautions.notice().strip());
    }

    private static Vocabulary.Caution caution(CautionRow row, List<Source> sources) {
        List<Source> cited = row.sources().stream()
                .map(key -> sources.stream().filter(source -> source.key().equals(key)).findFirst()
                        .orElseThrow(() -> new IllegalStateException("cautions.yaml: unknown source " + key)))
                .toList();
        return new Vocabulary.Caution(row.key(), row.title(), row.harm().strip(), row.checks(), row.stop().strip(),
                row.firstAid().strip(), cited);
    }

    private static <T> T table(String name, Class<T> type) {
        try {
            YamlTree tree = YamlReader.read(SharedFile.text(name + ".yaml"));
            List<Fault> faults = new SchemaCheck(name).check(tree);
            if (!faults.isEmpty() || !tree.duplicates().isEmpty()) {
                throw new IllegalStateException("shared/" + name + ".yaml: " + faults + tree.duplicates());
            }
            return TreeMapper.read(tree.root(), type);
        } catch (FaultyText broken) {
            throw new IllegalStateException("shared/" + name + ".yaml: " + broken.fault(), broken);
        }
    }

    private static <T> Map<String, T> byKey(List<T> rows, Function<T, String> key) {
        return rows.stream().collect(Collectors.toMap(key, Function.identity(), (one, other) -> {
            throw new IllegalStateException("a key twice: " + one + ", " + other);
        }, LinkedHashMap::new));
    }
}

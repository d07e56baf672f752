package brightseam.architecture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The table of packages in DEVELOPERS.md, as data. */
record FeatureTable(Map<String, Row> rows) {

    /** What one feature may use. */
    record Row(Set<String> core, Set<String> shell) {}

    static FeatureTable read() throws IOException {
        Map<String, Row> rows = new LinkedHashMap<>();
        for (String line : Files.readAllLines(Path.of("DEVELOPERS.md"))) {
            String[] cells = line.split("\\|", -1);
            if (cells.length == 6 && cells[1].strip().matches("[a-z]+") && !cells[1].strip().equals("package")) {
                rows.put(cells[1].strip(), new Row(names(cells[2]), names(cells[3])));
            }
        }
        return new FeatureTable(rows);
    }

    private static Set<String> names(String cell) {
        return Arrays.stream(cell.split(",")).map(String::strip).filter(name -> !name.isEmpty())
                .collect(Collectors.toUnmodifiableSet());
    }
}

package brightseam.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** The shared table of data identifiers says what the program does. */
class DataIdentifierTableTest {

    @Test
    void suppliers_identifiers_are_the_ones_that_the_program_reads() throws IOException {
        assertThat(rows("supplier_labels").stream().collect(Collectors.toMap(
                row -> row.get("identifier"), row -> Meaning.valueOf(row.get("meaning").toString()))))
                .isEqualTo(DataIdentifier.MEANINGS);
    }

    @Test
    void our_labels_carry_the_identifiers_that_the_table_gives_them() throws IOException {
        assertThat(rows("own_labels").stream()
                .map(row -> row.get("kind") + " " + row.get("identifier") + " " + row.get("letter")))
                .containsExactlyElementsOf(Arrays.stream(LabelKind.values())
                        .map(kind -> kind + " " + kind.dataIdentifier() + " " + kind.letter()).toList());
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> rows(String key) throws IOException {
        try (InputStream file = DataIdentifierTableTest.class.getResourceAsStream("/shared/data-identifiers.yaml")) {
            Map<String, Object> table = new Yaml(new SafeConstructor(new LoaderOptions())).load(file);
            return (List<Map<String, Object>>) table.get(key);
        }
    }
}

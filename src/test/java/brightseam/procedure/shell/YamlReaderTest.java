package brightseam.procedure.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.procedure.shell.Fault.Place;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

class YamlReaderTest {

    @Test
    void only_what_json_calls_a_number_or_a_truth_value_is_one() throws FaultyText {
        JsonNode root = YamlReader.read(
                "{a: 1.50, b: 30, c: no, d: 1:30, e: 010, f: 1e3, g: \"1\", h: true, i: ~}").root();
        assertEquals(new BigDecimal("1.50"), root.path("a").decimalValue());
        assertEquals(30, root.path("b").intValue());
        for (String text : new String[] {"c", "d", "e", "f", "g"}) {
            assertTrue(root.path(text).isString(), text);
        }
        assertTrue(root.path("h").isBoolean());
        assertTrue(root.path("i").isNull());
    }

    @Test
    void positions_count_from_one_and_survive_windows_line_ends() throws FaultyText {
        YamlTree tree = YamlReader.read("a: 1\r\nb:\r\n  - x\r\n  - c/d: y\r\n");
        assertEquals(new Place(3, 5), tree.valueAt("/b/0"));
        assertEquals(new Place(4, 10), tree.valueAt("/b/1/c~1d"));
        assertEquals(new Place(4, 5), tree.keyAt("/b/1/c~1d"));
        assertEquals(new Place(3, 3), tree.valueAt("/b/7/nowhere"));
    }

    @Test
    void a_byte_order_mark_is_passed_over() throws FaultyText {
        byte[] bytes = "\uFEFFa: 1".getBytes(StandardCharsets.UTF_8);
        assertEquals(1, YamlReader.read(FileText.read(bytes)).root().path("a").intValue());
    }

    @Test
    void only_comments_are_an_empty_file() {
        assertThrows(FaultyText.class, () -> YamlReader.read("# nothing\n"));
    }
}

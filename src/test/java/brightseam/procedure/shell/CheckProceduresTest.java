package brightseam.procedure.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckProceduresTest {

    private static final Path GOOD = Path.of("src/test/resources/bad-procedures/good.yaml");

    @TempDir
    Path folder;

    private final ByteArrayOutputStream printed = new ByteArrayOutputStream();

    @Test
    void the_shipped_folder_is_in_order() {
        assertEquals(0, check(Path.of("procedures")));
        assertTrue(text().contains("tube.yaml: TUBE rev C, 20 steps, in order"), text());
    }

    @Test
    void a_bad_file_is_named_with_line_and_column_and_the_status_is_not_zero() throws IOException {
        Files.copy(GOOD, folder.resolve("good.yaml"));
        Files.writeString(folder.resolve("bad.yaml"), Files.readString(GOOD).replace("open: 4 h", "open: 4"));
        assertEquals(1, check(folder));
        assertTrue(text().startsWith("bad.yaml:10:9: the number 4; expected a duration with its unit"), text());
        assertTrue(text().contains("good.yaml: ROD rev A"), text());
    }

    @Test
    void two_files_for_one_procedure_are_both_refused() throws IOException {
        Files.copy(GOOD, folder.resolve("one.yaml"));
        Files.copy(GOOD, folder.resolve("two.yml"));
        assertEquals(1, check(folder));
        assertEquals("""
                one.yaml:1:1: procedure ROD, which is also in two.yml; expected one file for each procedure
                two.yml:1:1: procedure ROD, which is also in one.yaml; expected one file for each procedure
                """, text());
    }

    @Test
    void an_empty_folder_and_a_missing_one_are_not_in_order() {
        assertEquals(1, check(folder));
        assertEquals(2, check(folder.resolve("nowhere")));
    }

    private int check(Path path) {
        return CheckProcedures.check(path, new PrintStream(printed, true, StandardCharsets.UTF_8));
    }

    private String text() {
        return printed.toString(StandardCharsets.UTF_8).replace("\r\n", "\n");
    }
}

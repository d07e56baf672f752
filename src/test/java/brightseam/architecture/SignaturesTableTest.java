package brightseam.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The tables of {@code docs/signatures.md} against the tests that they name. */
class SignaturesTableTest {

    private static final Path PAGE = Path.of("docs/signatures.md");
    private static final Pattern NAMED = Pattern.compile("`([A-Z]\\w*(?:Test|IT))(?:#(\\w+))?`");

    @Test
    void every_test_that_a_row_names_exists() throws IOException {
        Map<String, String> sources = sources();
        List<String> missing = new ArrayList<>();
        for (MatchResult named : NAMED.matcher(Files.readString(PAGE)).results().toList()) {
            String source = sources.get(named.group(1));
            boolean there = source != null && (named.group(2) == null
                    || Pattern.compile("@Test\\s+(?:@\\w+[^\\n]*\\s+)*(?:public )?void " + named.group(2) + "\\(")
                            .matcher(source).find());
            if (!there) {
                missing.add(named.group());
            }
        }
        assertThat(missing).isEmpty();
    }

    @Test
    void every_row_of_the_two_texts_names_a_test_or_leaves_it_to_the_shop() throws IOException {
        List<String> rows = Files.readAllLines(PAGE).stream()
                .dropWhile(line -> !line.startsWith("## FAA AC 120-78B")).filter(line -> line.startsWith("| "))
                .filter(line -> !line.startsWith("| ---") && !line.contains("| shown by |")).toList();
        assertThat(rows).hasSizeGreaterThan(30);
        assertThat(rows).allSatisfy(row -> assertThat(row).matches(line ->
                NAMED.matcher(line).find() || line.contains("| the shop |") || line.endsWith("| – |")));
        assertThat(rows.stream().filter(row -> NAMED.matcher(row).find())).hasSizeGreaterThan(28);
    }

    private static Map<String, String> sources() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
            return files.filter(file -> file.toString().matches(".*(Test|IT)\\.java")).collect(Collectors.toMap(
                    file -> file.getFileName().toString().replace(".java", ""), SignaturesTableTest::read,
                    (one, other) -> one + other));
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException failure) {
            throw new java.io.UncheckedIOException(failure);
        }
    }
}

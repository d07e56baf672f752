package brightseam.procedure.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Texts that are small and would grow, sink deep or name a class when they are read. */
class YamlBombsTest {

    private static final int DEEP = 100_000;

    @Test
    void a_text_that_would_grow_by_its_aliases_is_refused() {
        String laughs = IntStream.rangeClosed(1, 9).mapToObj(level -> "a" + level + ": &a" + level + " ["
                        + "*a%d,".formatted(level - 1).repeat(9) + "x]").collect(Collectors.joining("\n"));
        refused("a0: &a0 lol\n" + laughs);
        refused("<<: &x {a: 1}\nb: *x");
    }

    @Test
    void a_text_that_nests_without_end_is_refused_at_once() {
        refused("a: " + "[".repeat(DEEP));
        refused("{a: ".repeat(DEEP));
        refused("- ".repeat(DEEP) + "x");
        refused("? ".repeat(DEEP) + "x");
    }

    @Test
    void a_text_that_names_a_class_is_refused() {
        refused("a: !!javax.script.ScriptEngineManager [!!java.net.URLClassLoader [[!!java.net.URL [x]]]]");
        refused("!!java.io.File a");
        refused("a: !<tag:yaml.org,2002:java.lang.Runtime> b");
    }

    @Test
    void a_name_that_is_given_twice_and_a_number_without_end_are_no_surprise() throws FaultyText {
        assertThat(YamlReader.read("a: 1\na: 2").duplicates()).hasSize(1);
        assertThat(YamlReader.read("a: " + "9".repeat(DEEP)).root().get("a").isString()).isTrue();
        assertThat(YamlReader.read("a: 1e999999999").root().get("a").isString()).isTrue();
    }

    @Test
    void a_text_that_is_too_long_is_refused_before_it_is_read() {
        byte[] tooLong = "#".repeat(FileText.SIZE_MAX_BYTES + 1).getBytes(StandardCharsets.UTF_8);
        assertThatThrownBy(() -> FileText.read(tooLong)).isInstanceOf(FaultyText.class);
    }

    private static void refused(String text) {
        assertTimeoutPreemptively(Duration.ofSeconds(20), () ->
                assertThatThrownBy(() -> YamlReader.read(text)).isInstanceOf(FaultyText.class));
    }
}

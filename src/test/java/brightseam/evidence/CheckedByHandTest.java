package brightseam.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A verifier that only we wrote would be a weak proof: the standard tools have to come to the same. */
class CheckedByHandTest {

    private static final String GUIDE = "docs/verify.md";
    private static final Path SCRIPT = Path.of("docs/check_evidence.py").toAbsolutePath();
    private static final String KEY = SampleLedger.KEY.verifier().text();

    @TempDir
    private Path folder;

    private record Ran(int status, String said) {}

    private Ran run(List<String> command) throws IOException, InterruptedException {
        Path said = folder.resolve("said");
        Process process = new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true)
                .redirectOutput(said.toFile()).start();
        assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();
        return new Ran(process.exitValue(), Files.readString(said));
    }

    /** Says which tool is missing, so that nobody takes a skipped test for a passed one. */
    private void needs(String... tools) throws IOException, InterruptedException {
        for (String tool : tools) {
            boolean there = run(List.of("sh", "-c", "command -v " + tool)).status() == 0;
            if (!there) {
                System.out.println("NOT TESTED: " + GUIDE + " was not followed, because there is no " + tool);
            }
            assumeTrue(there, "no " + tool);
        }
    }

    private void put(Evidence evidence) throws IOException {
        Files.write(folder.resolve("evidence.json"), EvidenceForm.write(evidence));
        Files.writeString(folder.resolve("shop.key"), KEY + "\n");
    }

    private static List<String> blocks() throws IOException {
        Matcher found = Pattern.compile("```sh\n(.*?)```", Pattern.DOTALL).matcher(Files.readString(Path.of(GUIDE)));
        List<String> blocks = new ArrayList<>();
        while (found.find()) {
            blocks.add(found.group(1));
        }
        return blocks;
    }

    private List<String> followed() throws IOException, InterruptedException {
        Ran ran = run(List.of("sh", "-e", "-c", String.join("\n", blocks())));
        return ran.said().lines().toList();
    }

    @Test
    void the_guide_followed_word_by_word_proves_one_entry_with_standard_tools() throws Exception {
        needs("jq", "sha256sum", "xxd", "base64", "openssl");
        put(SampleLedger.small().evidence());
        List<String> said = followed();
        assertThat(said).hasSize(5);
        assertThat(said.get(0)).matches("[0-9a-f]{64}").isEqualTo(said.get(1));
        assertThat(said.get(2)).matches("[0-9a-f]{64}").isEqualTo(said.get(3));
        assertThat(said.get(4)).isEqualTo("Signature Verified Successfully");
    }

    @Test
    void the_guide_followed_word_by_word_finds_a_changed_entry() throws Exception {
        needs("jq", "sha256sum", "xxd", "base64", "openssl");
        put(SampleLedger.small().evidence());
        Path file = folder.resolve("evidence.json");
        Files.writeString(file, Files.readString(file).replace("Ida Quell", "Ada Quell"));
        List<String> said = followed();
        assertThat(said.get(0)).isNotEqualTo(said.get(1));
        assertThat(said.get(2)).isNotEqualTo(said.get(3));
    }

    @Test
    void the_script_that_shares_nothing_with_us_comes_to_the_same() throws Exception {
        needs("python3", "openssl");
        put(SampleLedger.small().evidence());
        Ran fits = run(List.of("python3", SCRIPT.toString(), "evidence.json", KEY));
        assertThat(fits).isEqualTo(new Ran(0, "fits: T-1042, entries 1 to 5; 8 entries in all are in the ledger"
                + " sample-shop of 12 entries, sealed time 2031-03-04T09:22:00Z, signed by sample-shop\n"));
        Ran otherKey = run(List.of("python3", SCRIPT.toString(), "evidence.json",
                SampleLedger.NEXT_KEY.verifier().text()));
        assertThat(otherKey.status()).isEqualTo(1);
    }

    @Test
    void the_script_finds_flips_in_every_envelope_path_position_and_note() throws Exception {
        needs("python3", "openssl");
        String whole = new String(EvidenceForm.write(SampleLedger.small().evidence()), StandardCharsets.UTF_8);
        List<String> changed = List.of(whole.replace("Ida Quell", "Ada Quell"),
                whole.replaceFirst("\"path\":\\[\"[0-9a-f]{4}", "\"path\":[\"0000"),
                whole.replaceFirst("\"position\":3", "\"position\":4"),
                whole.replaceFirst("\\\\n12\\\\n", "\\\\n13\\\\n"),
                whole.replaceFirst("consistency\":\\[\"[0-9a-f]{4}", "consistency\":[\"0000"));
        for (String text : changed) {
            assertThat(text).isNotEqualTo(whole);
            Files.writeString(folder.resolve("evidence.json"), text);
            assertThat(run(List.of("python3", SCRIPT.toString(), "evidence.json", KEY)).status()).isEqualTo(1);
        }
    }
}

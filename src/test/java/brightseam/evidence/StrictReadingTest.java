package brightseam.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StrictReadingTest {

    private static final String FILE =
            new String(EvidenceForm.write(SampleLedger.small().evidence()), StandardCharsets.UTF_8);

    private static String refusal(String text) {
        return refusal(text.getBytes(StandardCharsets.UTF_8));
    }

    private static String refusal(byte[] bytes) {
        Verdict verdict = new EvidenceVerifier(List.of(), Optional.empty()).verify(bytes);
        return verdict instanceof Verdict.Broken broken && broken.first() instanceof Misfit.Unreadable unreadable
                ? unreadable.why() : "read, or refused for another reason: " + verdict;
    }

    @Test
    void what_was_written_is_read_back_as_it_was() {
        assertThat(EvidenceForm.read(FILE.getBytes(StandardCharsets.UTF_8)))
                .isEqualTo(new EvidenceForm.Reading.Read(SampleLedger.small().evidence()));
    }

    @Test
    void a_name_that_stands_twice_is_refused() {
        assertThat(refusal(FILE.replaceFirst("\\{", "{\"checkpoint\":\"x\","))).contains("checkpoint stands twice");
    }

    @Test
    void names_that_the_form_does_not_have_and_names_that_are_missing_are_refused() {
        assertThat(refusal(FILE.replaceFirst("\\{", "{\"aside\":\"x\","))).contains("does not have: aside");
        assertThat(refusal(FILE.replace(",\"version\":1}", "}"))).contains("is missing");
    }

    @Test
    void bytes_behind_the_end_and_blanks_between_are_refused() {
        assertThat(refusal(FILE + "{}")).contains("something follows the end");
        assertThat(refusal(FILE + "\n")).contains("not in canonical form");
        assertThat(refusal(FILE.replaceFirst("\\{", "{ "))).contains("not in canonical form");
        assertThat(refusal("\ufeff" + FILE)).contains("no value");
    }

    @Test
    void numbers_that_two_readers_could_take_differently_are_refused() {
        for (String number : List.of("1e0", "1.0", "-1", "0", "01", "9007199254740993", "1" + "0".repeat(5000))) {
            assertThat(refusal(FILE.replace("\"position\":3,", "\"position\":" + number + ",")
                    .replace("\"position\":3}", "\"position\":" + number + "}"))).doesNotContain("read, or");
        }
    }

    @Test
    void deep_nesting_is_refused_before_it_costs_anything() {
        assertThat(refusal("[".repeat(2_000_000))).contains("nested too deeply");
        assertThat(refusal("{\"checkpoint\":".repeat(500_000))).contains("nested too deeply");
    }

    @Test
    void text_that_is_not_utf_8_and_half_characters_are_refused() {
        byte[] bytes = FILE.getBytes(StandardCharsets.UTF_8);
        bytes[200] = (byte) 0xff;
        assertThat(refusal(bytes)).contains("not UTF-8");
        assertThat(refusal(FILE.replaceFirst("sample-shop", "\\\\ud800"))).contains("half a character");
    }

    @Test
    void escapes_that_canonical_form_does_not_use_are_refused() {
        assertThat(refusal(FILE.replaceFirst("sample-shop", "\\\\u0073ample-shop"))).contains("not in canonical form");
        assertThat(refusal(FILE.replaceFirst("sample-shop", "sample\\\\/shop"))).contains("not in canonical form");
    }

    @Test
    void a_file_that_is_too_long_is_not_read() {
        assertThat(refusal(new byte[EvidenceForm.BYTES_MAX + 1])).contains("longer than");
    }

    @Test
    void nothing_and_anything_else_are_no_evidence() {
        assertThat(refusal("")).contains("ends too early");
        assertThat(refusal("null")).contains("missing");
        assertThat(refusal("%PDF-1.7")).contains("no value");
    }
}

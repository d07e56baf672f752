package brightseam.words;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.Refusal;
import brightseam.words.shell.SharedWords;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The table of words against every refusal that the program can make. */
class RefusalWordsTest {

    private final Wording wording = SharedWords.wording();
    private final Map<String, List<Refusal>> byCode = byCode();

    @Test
    void every_refusal_has_words_and_every_entry_has_a_refusal() {
        assertThat(byCode).hasSizeGreaterThan(100);
        assertThat(wording.codes()).containsExactlyInAnyOrderElementsOf(byCode.keySet());
    }

    @Test
    void words_name_only_evidence_that_every_refusal_of_the_code_carries() {
        List<String> wrong = new ArrayList<>();
        byCode.forEach((code, refusals) -> refusals.forEach(refusal -> {
            Set<String> named = new TreeSet<>(wording.evidenceNamed(code));
            named.removeAll(refusal.evidence().keySet());
            named.forEach(name -> wrong.add(code + " names " + name + ", which "
                    + refusal.getClass().getSimpleName() + " lacks"));
        }));
        assertThat(wrong).isEmpty();
    }

    @Test
    void every_sentence_can_be_made_and_says_word_reason_and_way_out() {
        byCode.values().forEach(refusals -> refusals.forEach(refusal -> {
            Explanation told = wording.explain(refusal);
            assertThat(told.sentence()).as(refusal.code()).doesNotContain("{", "}", "?")
                    .matches("(?s)[A-Z\"0-9].*\\.");
            assertThat(told.word()).as(refusal.code()).isNotBlank().hasSizeLessThan(22);
            assertThat(told.wayOut()).as(refusal.code()).endsWith(".");
        }));
    }

    private static Map<String, List<Refusal>> byCode() {
        return new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("brightseam").stream()
                .filter(type -> type.isAssignableTo(Refusal.class) && !type.isInterface())
                .map(JavaClass::reflect).map(type -> (Refusal) Specimen.of(type))
                .collect(Collectors.groupingBy(Refusal::code, TreeMap::new, Collectors.toList()));
    }
}

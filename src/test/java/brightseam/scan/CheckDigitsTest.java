package brightseam.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Check characters and digits against published examples. */
class CheckDigitsTest {

    /** A bar code tutorial's example (zalansite.site): PJJ123C in code set A, sum 878, check value 54. */
    @Test
    void code_128_checks_PJJ123C_in_set_A_as_54() {
        assertThat(Code128Check.of(codeSetA("PJJ123C"))).isEqualTo(54);
    }

    /** barcodeisland.com: HI in set A, 345678 in set C; 103, 40, 41, 99, 34, 56, 78 give 1406 and 67. */
    @Test
    void code_128_checks_a_change_of_sets_as_67() {
        assertThat(Code128Check.of(List.of(103, 40, 41, 99, 34, 56, 78))).isEqualTo(67);
    }

    /** barcoderesource.com: ABCDEF in set A 42, abcdef in set B 97, 345678 in set C 73. */
    @Test
    void code_128_checks_one_text_in_each_set() {
        assertThat(Code128Check.of(codeSetA("ABCDEF"))).isEqualTo(42);
        assertThat(Code128Check.of(codeSetB("abcdef"))).isEqualTo(97);
        assertThat(Code128Check.of(List.of(105, 34, 56, 78))).isEqualTo(73);
    }

    /**
     * A printed manual (manualshive.com) gives "123LPJ23@" with sum 77 and check character Y. That is a misprint: 77
     * is the sum of 123LPJ123, whose character is Y; what is printed gives 76 and X.
     */
    @Test
    void code_39_checks_what_the_manual_meant_and_not_what_it_printed() {
        assertThat(Code39Check.of("123LPJ123")).contains('Y');
        assertThat(Code39Check.of("123LPJ23")).contains('X');
    }

    @Test
    void code_39_has_no_check_character_for_what_it_cannot_hold() {
        assertThat(Code39Check.of("b-0142")).isEmpty();
    }

    /** gs1hk.org: 629104150021 has the sum 57 and the check digit 3. */
    @Test
    void a_trade_item_number_ends_in_its_check_digit() {
        assertThat(Gs1CheckDigit.of("629104150021")).isEqualTo('3');
        assertThat(Gs1CheckDigit.closes("6291041500213")).isTrue();
        assertThat(Gs1CheckDigit.closes("6291041500231")).isFalse();
    }

    /** An example of the GS1 General Specifications (from memory): 37610425002123456 has the check digit 9. */
    @Test
    void a_logistic_unit_ends_in_its_check_digit() {
        assertThat(Gs1CheckDigit.of("37610425002123456")).isEqualTo('9');
    }

    /**
     * ISO/IEC 7064 MOD 37-2 as blood donation numbers use it: A999914123458 has J, in an open project's notes on
     * ISBT 128 that name it a verified example.
     */
    @Test
    void our_check_character_is_the_standards_for_texts_without_hyphens() {
        assertThat(CheckCharacter.of("A999914123458")).contains('J');
        assertThat(CheckCharacter.fits("A999914123458", 'J')).isTrue();
    }

    @Test
    void our_check_character_finds_every_wrong_character_and_every_swap_of_neighbours() {
        Random random = new Random(7064);
        String alphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ-";
        for (int round = 0; round < 300; round++) {
            StringBuilder made = new StringBuilder();
            for (int i = 0; i < 2 + random.nextInt(22); i++) {
                made.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            String text = made.toString();
            char check = CheckCharacter.of(text).orElseThrow();
            assertThat(spoilt(text, alphabet)).noneMatch(other -> CheckCharacter.fits(other, check));
        }
    }

    @Test
    void our_check_character_is_refused_for_lower_case_and_other_characters() {
        assertThat(CheckCharacter.of("b-0142")).isEmpty();
        assertThat(CheckCharacter.of("B*0142")).isEmpty();
        assertThat(CheckCharacter.of("B-0142\u001D")).isEmpty();
    }

    private static Stream<String> spoilt(String text, String alphabet) {
        Stream<String> wrong = IntStream.range(0, text.length()).boxed().flatMap(at -> alphabet.chars()
                .mapToObj(c -> text.substring(0, at) + (char) c + text.substring(at + 1)));
        Stream<String> swapped = IntStream.range(1, text.length()).mapToObj(at -> text.substring(0, at - 1)
                + text.charAt(at) + text.charAt(at - 1) + text.substring(at + 1));
        return Stream.concat(wrong, swapped).filter(other -> !other.equals(text));
    }

    private static List<Integer> codeSetA(String text) {
        return Stream.concat(Stream.of(103), text.chars().mapToObj(c -> c - 32)).toList();
    }

    private static List<Integer> codeSetB(String text) {
        return Stream.concat(Stream.of(104), text.chars().mapToObj(c -> c - 32)).toList();
    }
}

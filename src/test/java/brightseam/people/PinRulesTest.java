package brightseam.people;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Refusal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PinRulesTest {

    private static final BadgeId BADGE = new BadgeId("P-0742");

    @ParameterizedTest
    @ValueSource(strings = {"", "123", "123456789", "12a4", "12 4", "-123", "١٢٣٤"})
    void a_pin_is_four_to_eight_plain_digits(String pin) {
        assertThat(codes(pin)).containsExactly("pin-form");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0000", "11111", "1212", "646464", "1234", "7890", "4321", "98765432", "0742"})
    void a_pin_that_is_tried_first_is_refused(String pin) {
        assertThat(codes(pin)).contains("pin-trivial");
    }

    @ParameterizedTest
    @ValueSource(strings = {"2580", "1357", "1223", "83150276"})
    void any_other_pin_is_taken(String pin) {
        assertThat(codes(pin)).isEmpty();
    }

    @Test
    void no_refusal_carries_the_pin() {
        PinRules.broken(BADGE, "0742").forEach(refusal ->
                assertThat(refusal.evidence().values()).noneMatch(text -> text.contains("0742")));
        assertThat(PinRules.broken(BADGE, "0742")).isNotEmpty();
    }

    @Test
    void two_slips_cost_no_pause_and_later_ones_do() {
        assertThat(List.of(1, 2, 3, 4, 5).stream().map(PinRules::pauseSeconds)).containsExactly(0, 0, 5, 15, 15);
    }

    private static List<String> codes(String pin) {
        return PinRules.broken(BADGE, pin).stream().map(Refusal::code).toList();
    }
}

package brightseam.ui.chamber;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.procedure.Vocabulary.Caution;
import brightseam.ui.chamber.Asked.Stage;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class AskedTest {

    private static final Caution CAUTION =
            new Caution("bad-air", "Bad air", "No air.", List.of("Monitor on."), "Alarm.", "Call.", List.of());

    @Test
    void one_touch_is_enough_where_nothing_is_asked() {
        assertThat(Asked.of(Act.main(Act.Kind.SHUT_OUTER, "Shut")).stage()).isEqualTo(Stage.NOTHING_MORE);
    }

    @Test
    void cautions_come_before_a_reason_a_scan_and_the_pin() {
        Asked asked = Asked.of(Act.main(Act.Kind.CLOSE_CHAMBER, "Close").asking(new Act.Confirm("Close", List.of(),
                List.of(CAUTION), List.of("because"), Optional.of("Scan gloves"), Optional.of("PIN"))));
        assertThat(asked.stage()).isEqualTo(Stage.CAUTIONS);
        asked = asked.confirmed();
        assertThat(asked.stage()).isEqualTo(Stage.REASON);
        asked = asked.because("because");
        assertThat(asked.stage()).isEqualTo(Stage.SCAN);
        asked = asked.with("G-0301").with("G-0301").with("G-0302");
        assertThat(asked.stage()).isEqualTo(Stage.SCAN);
        assertThat(asked.scanned()).containsExactly("G-0301", "G-0302");
        asked = asked.confirmed();
        assertThat(asked.stage()).isEqualTo(Stage.PIN);
        assertThat(asked.checked()).isTrue();
    }

    @Test
    void what_is_asked_without_cautions_and_pin_is_confirmed_by_a_second_touch() {
        Asked asked = Asked.of(Act.main(Act.Kind.SHUT_INNER, "Shut").asking(new Act.Confirm("Sure?",
                List.of("It ends the pass."), List.of(), List.of(), Optional.empty(), Optional.empty())));
        assertThat(asked.stage()).isEqualTo(Stage.CAUTIONS);
        assertThat(asked.confirmed().stage()).isEqualTo(Stage.NOTHING_MORE);
    }

    @Test
    void cautions_are_not_taken_for_read_because_somebody_typed_a_reason() {
        Asked asked = Asked.of(Act.main(Act.Kind.ABANDON, "Give up").asking(new Act.Confirm("Give up", List.of(),
                List.of(CAUTION), List.of("no"), Optional.empty(), Optional.of("PIN")))).because("no");
        assertThat(asked.stage()).isEqualTo(Stage.CAUTIONS);
        assertThat(asked.checked()).isFalse();
    }
}

package brightseam.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a screen can use, and the refusals that say why not. */
class ExpectedTest {

    private static final OwnLabel HEAT = new OwnLabel(LabelKind.HEAT, "H-9T3381");

    @Test
    void a_label_of_an_expected_kind_is_not_refused() {
        assertThat(Expected.only(LabelKind.BIN, LabelKind.HEAT).refuses(HEAT)).isEmpty();
    }

    @Test
    void a_label_of_another_kind_is_refused_with_both_kinds() {
        Expected expected = Expected.only(LabelKind.TRAVELLER, LabelKind.BIN);

        assertThat(expected.refuses(HEAT)).contains(
                new WrongKindOfLabel(Set.of(LabelKind.BIN, LabelKind.TRAVELLER), LabelKind.HEAT, "H-9T3381"));
        assertThat(expected.refuses(HEAT).orElseThrow().evidence()).isEqualTo(
                Map.of("expected", "BIN, TRAVELLER", "found", "HEAT", "id", "H-9T3381"));
    }

    @Test
    void a_suppliers_label_is_refused_unless_it_was_asked_for() {
        SupplierLabel label = new SupplierLabel(LabelSyntax.DATA_IDENTIFIERS,
                List.of(Field.text("1T", "88A", Meaning.LOT)));

        assertThat(Expected.only(LabelKind.HEAT).refuses(label)).contains(new NotOurLabel("88A"));
        assertThat(Expected.only(LabelKind.HEAT).orSupplierLabel().refuses(label)).isEmpty();
    }

    @Test
    void a_foreign_code_is_shown_no_longer_than_a_screen_can_show() {
        assertThat(new NotOurLabel("\uD83D\uDD29".repeat(100)).text()).isEqualTo("\uD83D\uDD29".repeat(60));
    }

    @Test
    void an_unreadable_scan_is_refused_with_its_reason_whatever_was_asked_for() {
        Unreadable cut = new Unreadable(UnreadableReason.ENVELOPE_CUT);

        assertThat(Expected.only(LabelKind.BIN).orSupplierLabel().refuses(cut))
                .contains(new LabelDamaged(UnreadableReason.ENVELOPE_CUT));
    }
}

package brightseam.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What people type off a label. The check characters: B-0142 4, P-0007 A, S-ACID-1 and T-1042-A as computed. */
class TypedLabelTest {

    private static final OwnLabel BADGE = new OwnLabel(LabelKind.BADGE, "P-0007");

    @Test
    void a_label_is_typed_with_or_without_hyphens_and_in_either_case() {
        assertThat(BADGE.printed()).isEqualTo("P-0007 A");
        for (String typed : List.of("P-0007 A", "p-0007 a", "p-0007a", "p0007a", "  P0007  A ", "P\u20110007 A")) {
            assertThat(parse(typed)).as(typed).isEqualTo(BADGE);
        }
    }

    @Test
    void hyphens_are_put_back_where_letters_and_digits_meet() {
        for (OwnLabel label : List.of(new OwnLabel(LabelKind.STATION, "S-ACID-1"),
                new OwnLabel(LabelKind.TRAVELLER, "T-1042-A"), new OwnLabel(LabelKind.HEAT, "H-9T3381"))) {
            assertThat(parse(label.id().replace("-", "") + " " + label.check())).isEqualTo(label);
        }
    }

    @Test
    void the_points_of_a_split_lot_are_typed() {
        OwnLabel piece = new OwnLabel(LabelKind.TRAVELLER, "T-1042.1.1");

        assertThat(parse("t1042.1.1 " + piece.check())).isEqualTo(piece);
        assertThat(parse("t-1042-1-1 " + piece.check()))
                .isEqualTo(new Unreadable(UnreadableReason.CHECK_CHARACTER_WRONG));
    }

    @Test
    void a_wrong_check_character_is_refused() {
        for (char wrong : "0123456789BCDEFGHIJKLMNOPQRSTUVWXYZ*".toCharArray()) {
            assertThat(parse("P-0007 " + wrong)).isEqualTo(new Unreadable(UnreadableReason.CHECK_CHARACTER_WRONG));
        }
    }

    @Test
    void an_identity_typed_without_its_check_character_is_never_taken_for_a_shorter_one() {
        List<ScanReading> readings = IntStream.range(0, 10_000)
                .mapToObj(number -> parse("B-%04d".formatted(number))).distinct().toList();

        assertThat(readings).containsExactly(new Unreadable(UnreadableReason.CHECK_CHARACTER_MISSING));
    }

    @Test
    void a_check_character_that_is_a_digit_stands_apart() {
        assertThat(parse("B-0142 4")).isEqualTo(new OwnLabel(LabelKind.BIN, "B-0142"));
        assertThat(parse("B-01424")).isEqualTo(new Unreadable(UnreadableReason.CHECK_CHARACTER_MISSING));
    }

    @Test
    void text_that_is_nothing_of_ours_is_plain() {
        assertThat(parse("lot 77/3")).isEqualTo(new PlainCode("lot 77/3"));
    }

    @Test
    void an_identity_has_to_begin_with_its_kinds_letter() {
        assertThatThrownBy(() -> new OwnLabel(LabelKind.BIN, "T-1042"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static ScanReading parse(String typed) {
        return ScanParser.standard().parse(RawScan.typed(typed), LocalDate.of(2026, 1, 15));
    }
}

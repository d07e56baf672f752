package brightseam.ui.board;

import static brightseam.ui.board.Lot.NOW;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.KitId;
import brightseam.kernel.TravellerId;
import brightseam.kit.Kit;
import brightseam.kit.KitLine;
import brightseam.procedure.BinClass;
import brightseam.traveller.Nonconformance.Cause;
import brightseam.traveller.Phase;
import brightseam.traveller.Window;
import brightseam.traveller.WindowEnd;
import brightseam.traveller.shell.Card;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BoardModelTest {

    private static final Kit SEVEN = kit("K-07", Optional.of(Duration.ofHours(2)));

    @Test
    void what_runs_out_first_comes_first_then_kits_by_label() {
        List<Card> cards = List.of(
                Lot.of("T-1", "K-09").card(),
                Lot.of("T-2", "K-08").card(),
                Lot.of("T-3", "K-07").card(),
                Lot.of("T-4", "K-08").cleanedMinutesAgo(23 * 60 + 30).card(),
                Lot.of("T-5", "K-08").holding("pickle", 200).card(),
                Lot.of("T-6", "K-08").held("pickle", 50).card());
        assertThat(rows(cards)).extracting(row -> row.id().value())
                .containsExactly("T-6", "T-5", "T-4", "T-3", "T-2", "T-1");
    }

    @Test
    void what_has_run_out_stands_above_what_will() {
        List<Card> cards = List.of(Lot.of("T-1", "K-08").held("pickle", 59).card(),
                Lot.of("T-2", "K-08").holding("pickle", 420).card());
        assertThat(rows(cards)).extracting(row -> row.id().value()).containsExactly("T-2", "T-1");
        assertThat(rows(cards).getFirst().first()).contains(
                new Countdown(Countdown.Kind.HOLD, "Acid pickle over its maximum", Duration.ofMinutes(-2)));
    }

    @Test
    void a_running_gap_says_what_has_to_begin() {
        BoardRow row = row(Lot.of("T-1", "K-08").held("pickle", 15));
        assertThat(row.first()).contains(
                new Countdown(Countdown.Kind.GAP, "Rinse has to begin", Duration.ofSeconds(45)));
        assertThat(row.hurries()).isTrue();
    }

    @Test
    void unsigned_steps_are_counted_and_what_follows_from_them_is_not_said() {
        assertThat(row(Lot.of("T-1", "K-08").signed("pickle", "rinse")).missing())
                .containsExactly("Dry not signed, then 2 more");
        assertThat(row(Lot.of("T-1", "K-08").cleanedMinutesAgo(5)).missing())
                .containsExactly("White-cloth check not stamped");
    }

    @Test
    void quarantine_is_said_first_with_its_cause() {
        BoardRow row = row(Lot.of("T-1", "K-08").held("pickle", 400).stopped(Cause.HOLD_OVERRUN, "pickle"));
        assertThat(row.verdict()).isEqualTo("Quarantine");
        assertThat(row.missing()).first().isEqualTo("quarantine: Acid pickle overrun");
        assertThat(row.hurries()).isTrue();
    }

    @Test
    void suspicion_is_said_of_what_is_through_the_lock_or_closed_too_and_the_kit_says_which() {
        List<Card> cards = List.of(
                Lot.of("T-1", "K-07").phase(Phase.PASSED_IN).stopped(Cause.SUSPECT, "pickle").card(),
                Lot.of("T-2", "K-07").phase(Phase.CLOSED).stopped(Cause.SUSPECT, "pickle").card(),
                Lot.of("T-3", "K-07").phase(Phase.CLOSED).card());
        assertThat(rows(cards)).extracting(row -> row.id().value()).containsExactly("T-1", "T-2");
        assertThat(rows(cards)).allSatisfy(row -> {
            assertThat(row.verdict()).isEqualTo("Suspect: quarantine");
            assertThat(row.missing()).containsExactly("quarantine: suspect: as found");
        });
        assertThat(KitStanding.of(SEVEN, cards, Lot.NOW).suspects()).containsExactly(
                new KitStanding.HoldUp(new TravellerId("T-1"), "pieces 1, 2, passed into the chamber"),
                new KitStanding.HoldUp(new TravellerId("T-2"), "pieces 1, 2, closed"));
    }

    @Test
    void a_clean_lot_in_a_closed_clean_bin_is_ready_until_too_little_of_the_window_is_left() {
        assertThat(row(ready("T-1", "K-08", 60)).verdict()).isEqualTo("Ready to pass in");
        BoardRow late = row(ready("T-1", "K-08", 23 * 60 + 42));
        assertThat(late.verdict()).isEqualTo("Not ready");
        assertThat(late.missing()).containsExactly("window closes in 18 min, passing in needs it open for 30 min");
        assertThat(late.first().map(Countdown::words)).contains("Clean window closes (closed clean bin)");
    }

    @Test
    void bins_and_lost_windows_are_said_once_the_lot_was_clean() {
        assertThat(row(ready("T-1", "K-08", 60).in("B-0201", BinClass.CLEAN_BIN, false)).missing())
                .containsExactly("B-0201 is not closed");
        assertThat(row(ready("T-1", "K-08", 60).in("B-0101", BinClass.SHOP_BIN, false)).missing())
                .containsExactly("not in a clean bin or sealed bag");
        assertThat(row(Lot.of("T-1", "K-08").signed("pickle", "rinse", "dry")
                .window(new Window.Ended(NOW, WindowEnd.TOUCHED))).missing())
                .containsExactly("Solvent wipe not signed, then 1 more", "touched, not clean any more");
        assertThat(row(Lot.of("T-1", "K-08").signed("pickle", "rinse", "dry")
                .window(new Window.Ended(NOW, WindowEnd.RUN_OUT))).missing())
                .contains("clean window has run out");
    }

    @Test
    void where_it_is_names_step_station_class_and_bin() {
        BoardRow row = row(Lot.of("T-1", "K-08").signed("pickle").in("B-0031", BinClass.PROCESS_BASKET, false));
        assertThat(row.step()).isEqualTo("Step 20 Rinse, to be begun at a rinse place");
        assertThat(row.bin()).isEqualTo("in process basket B-0031");
        assertThat(row.now()).isEqualTo("Rinse to be begun");
    }

    @Test
    void what_has_ended_is_not_on_the_board() {
        assertThat(rows(List.of(Lot.of("T-1", "K-08").phase(Phase.CLOSED).card(),
                Lot.of("T-2", "K-08").phase(Phase.SCRAPPED).card()))).isEmpty();
    }

    @Test
    void a_kit_goes_in_when_every_piece_is_released_and_every_traveller_ready() {
        KitStanding ready = standing(ready("T-1", "K-07", 60).pieces(4).card());
        assertThat(ready.verdict()).isEqualTo(KitStanding.Verdict.CAN_GO_IN);
        KitStanding lacking = standing(ready("T-1", "K-07", 60).pieces(3).card());
        assertThat(lacking.verdict()).isEqualTo(KitStanding.Verdict.CANNOT_GO_IN_YET);
        assertThat(lacking.lacking()).containsExactly("1 of 4 LF-100-01 not released");
    }

    @Test
    void a_kit_names_who_holds_it_up_and_who_will_not_last_until_the_session() {
        KitStanding kit = standing(ready("T-1", "K-07", 60).card(), Lot.of("T-2", "K-07").signed("pickle").card(),
                ready("T-3", "K-07", 22 * 60 + 30).card());
        assertThat(kit.holdUps()).containsExactly(new KitStanding.HoldUp(
                Lot.of("T-2", "K-07").card().id(), "Rinse not signed, then 3 more"));
        assertThat(kit.closing()).extracting(late -> late.traveller().value()).containsExactly("T-3");
        assertThat(kit.session().map(Countdown::left)).contains(Duration.ofHours(2));
    }

    @Test
    void scrapped_travellers_leave_their_pieces_lacking_and_a_kit_without_travellers_says_so() {
        assertThat(standing(Lot.of("T-1", "K-07").phase(Phase.SCRAPPED).card()).verdict())
                .isEqualTo(KitStanding.Verdict.NOTHING_RELEASED);
        assertThat(standing(ready("T-1", "K-07", 60).card(), Lot.of("T-2", "K-07").phase(Phase.SCRAPPED).card())
                .lacking()).containsExactly("2 of 4 LF-100-01 not released");
        assertThat(standing(ready("T-1", "K-07", 60).pieces(4).phase(Phase.PASSED_IN).card()).verdict())
                .isEqualTo(KitStanding.Verdict.IS_IN);
    }

    @Test
    void the_list_for_spreadsheets_says_what_the_board_says() {
        String csv = BoardModel.csv(rows(List.of(Lot.of("T-1", "K-08").held("pickle", 15).card())));
        assertThat(csv).contains("T-1,K-08,\"Frame leg, 2 pieces\",").contains(",Rinse has to begin,45\r\n");
    }

    private static Lot ready(String id, String kit, long minutesAgo) {
        return Lot.of(id, kit).cleanedMinutesAgo(minutesAgo).signed("cloth");
    }

    private static BoardRow row(Lot lot) {
        return rows(List.of(lot.card())).getFirst();
    }

    private static List<BoardRow> rows(List<Card> cards) {
        return BoardModel.rows(cards, List.of(SEVEN), NOW);
    }

    private static KitStanding standing(Card... cards) {
        return BoardModel.kits(List.of(cards), List.of(SEVEN), NOW).getFirst();
    }

    private static Kit kit(String id, Optional<Duration> session) {
        return new Kit(new KitId(id), "Lander frame", session.map(NOW.wall()::plus), List.of(
                new KitLine(1, "LF-100-01", "Frame leg", "B", 4, "TUBE", Optional.empty())), false);
    }
}

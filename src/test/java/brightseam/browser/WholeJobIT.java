package brightseam.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.demo.DemoPerson;
import brightseam.kernel.KitId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.ChainVerifier;
import brightseam.ledger.Entry;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Rebuild;
import brightseam.scan.LabelKind;
import brightseam.traveller.NextAction;
import brightseam.traveller.Nonconformance;
import brightseam.traveller.Phase;
import brightseam.traveller.TravellerEvent;
import brightseam.traveller.Window;
import brightseam.traveller.shell.Travellers;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Response;
import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;

/**
 * One kit from its release to the last stamp, on screens alone: a fabricator, a lead and an inspector, each with a
 * tablet of the own. Each test goes on where the one before ended.
 */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class WholeJobIT extends WholeJob {

    @Test
    @Order(1)
    void what_time_alone_brings_about_comes_onto_the_board_by_itself() {
        bram.open("/board");
        TravellerId pickling = shift.only(card -> card.next() instanceof NextAction.Holding hold
                && hold.step().title().equals("Acid pickle"));
        TravellerId rods = shift.only(card -> card.traveller().window() instanceof Window.Open
                && card.procedure().ref().id().equals("FILLER") && card.traveller().placement()
                        .filter(where -> !where.closed()).isPresent());
        assertThat(bram.page().locator("[data-traveller='" + pickling + "']")).containsText("Acid pickle is running");
        long before = System.currentTimeMillis();
        shift.pass(Duration.ofMinutes(4));
        board.says(pickling, "quarantine: Acid pickle overrun", before);
        assertThat(shift.traveller(pickling).openNonconformances()).extracting(Nonconformance::cause)
                .contains(Nonconformance.Cause.HOLD_OVERRUN);
        before = System.currentTimeMillis();
        shift.passWindow(rods);
        board.says(rods, "clean window has run out", before);
        Tour.across(bram, "board");
    }

    @Test
    @Order(2)
    void the_lead_releases_a_kit_from_its_parts_list_and_prints_the_labels() throws IOException {
        bram.open("/release").fill("Kit label", "K-0050").fill("Title", "Lander 8, spare leg").push("Open this kit");
        bram.page().getByText("Now its parts list").waitFor();
        bram.fill("Parts list as CSV", "part_number,description,drawing_revision,quantity,procedure,heat\n"
                + "HDF-5000-01,\"Spare leg, upper tube\",A,3,TUBE,H-4471\n").push("Check the list and add it");
        bram.page().getByText("HDF-5000-01 rev A").waitFor();
        bram.push("Release the lines that have a heat");
        Locator labels = bram.page().getByText("Print traveller labels");
        labels.waitFor();
        Tour.upright(bram, "release");
        lot = server().bean(Travellers.class).ofKit(new KitId("K-0050")).getFirst().id();
        byte[] pdf = bram.page().request().get(labels.evaluate("link => link.href").toString()).body();
        label = firstPage(pdf, LABEL_DPI);
        assertThat(text(pdf)).contains(lot.value(), "H-4471");
        bram.open("/board");
    }

    @Test
    @Order(3)
    void a_tablet_s_camera_reads_the_printed_label_and_the_card_opens() throws IOException {
        try (Browser withCamera = Chromium.launch(FakeCamera.lookingAt(label, films.resolve("label.y4m")));
                ShopTablet tablet = new ShopTablet(withCamera, server().url(), "job-camera")) {
            tablet.signIn("P-0102", "593726");
            Response read = tablet.page().waitForResponse(
                    answer -> answer.url().endsWith("/scan/frame") && answer.status() == 200,
                    () -> tablet.press("Camera"));
            assertThat(read.text()).contains(lot.value());
            tablet.shows("Cut to length");
            assertThat(tablet.page().locator(".load")).containsText(lot + " · 3 pieces");
            Tour.upright(tablet, "card");
            ilka.scan(LabelKind.TRAVELLER, lot.value()).shows("Cut to length");
            tablet.hears("Card moved");
        }
    }

    @Test
    @Order(4)
    void a_wrong_bin_and_a_wrong_station_are_refused_and_a_hostile_barcode_does_nothing() {
        ilka.scan(LabelKind.BIN, "B-0308").hears("Wrong bin");
        Tour.across(ilka, "refused");
        ilka.seen();
        for (String data : List.of("<img src=x onerror='window.scanRan=1'>", "'; drop table ledger_entry; --",
                "A<b>".repeat(1250))) {
            ilka.wedge(data).hears("Not our label").seen();
        }
        assertThat(ilka.page().evaluate("'scanRan' in window || document.querySelector('img[src=x]') !== null"))
                .isEqualTo(false);
        fabricator.until("Cut to length", "Scan the label of the saw");
        ilka.scan(LabelKind.STATION, "S-COPE-1").hears("Wrong station").seen();
        fabricator.until("Cope the ends", "Scan the label of the cope machine");
        board.says(lot, "Cope the ends not signed", fabricator.signedAtMillis());
    }

    @Test
    @Order(5)
    void the_inspector_rejects_a_piece_which_the_lead_sets_apart_before_the_rest_is_stamped() {
        fabricator.until("Dimensional inspection", "Waits for a stamp");
        board.says(lot, "Dimensional inspection not stamped", fabricator.signedAtMillis());
        sanna.open("/stamp/" + lot);
        Locator reject = sanna.page().locator(".stamp-reject");
        reject.getByLabel("piece 3").check();
        reject.getByLabel("What was found").fill("Piece 3: cope 0.4 mm short");
        pressWithPin(sanna, reject, DemoPerson.SANNA_VEIT.pin(), "Reject");
        told(sanna, "Rejected");
        board.says(lot, "Dimensional inspection rejected", sanna.pressedAtMillis());
        ilka.shows("In quarantine");
        setApartPieceThree();
        Locator accept = sanna.page().locator(".stamp-accept");
        pressWithPin(sanna, accept, DemoPerson.SANNA_VEIT.pin(), "Accept and stamp");
        told(sanna, "Stamped");
        board.says(lot, "Alkaline degrease not signed", sanna.pressedAtMillis());
        ilka.shows("Alkaline degrease");
    }

    private static void setApartPieceThree() {
        bram.open("/board/traveller/" + lot);
        bram.page().locator("vaadin-checkbox-group").getByLabel("3", new Locator.GetByLabelOptions().setExact(true))
                .check();
        bram.fill("Reason for setting them apart (goes into the record)", "Waits for the drawing office")
                .fill("Your PIN to set apart", DemoPerson.BRAM_ODUYA.pin()).push("Set apart and sign");
        told(bram, "Set apart");
        bram.open("/board");
        TravellerId apart = new TravellerId(lot + ".1");
        assertThat(bram.page().locator("[data-traveller='" + apart + "']")).containsText("Quarantine");
        assertThat(shift.traveller(apart).pieces()).containsExactly(3);
        assertThat(shift.traveller(lot).pieces()).containsExactly(1, 2);
        assertThat(shift.traveller(lot).openNonconformances()).isEmpty();
    }

    @Test
    @Order(6)
    void a_hold_survives_a_reload_another_tablet_and_a_cut_network_and_is_not_ended_too_early() {
        fabricator.until("Alkaline degrease", "The clock starts now");
        fabricator.act(fabricator.look());
        assertThat(ilka.page().locator(".work-card .action.main")).isDisabled();
        Tour.across(ilka, "hold");
        ilka.page().reload();
        ilka.ready().shows("Alkaline degrease");
        assertRunsOn(ilka);
        try (ShopTablet juno = shift.tablet(DemoPerson.JUNO_CASTELL, "job-other")) {
            juno.scan(LabelKind.TRAVELLER, lot.value()).hears("Open").shows("Alkaline degrease");
            assertRunsOn(juno);
            ilka.hears("Card moved").seen().scan(LabelKind.TRAVELLER, lot.value()).shows("Alkaline degrease");
            juno.hears("Card moved");
        }
        ilka.network(false);
        link("Timers on this page run on");
        assertRunsOn(ilka);
        ilka.scan(LabelKind.BIN, "B-0308");
        assertThat(ilka.page().locator(".scan-says")).containsText("Not taken: no server");
        Tour.across(ilka, "no-server");
        ilka.network(true);
        link("The server is back");
        assertThat(ilka.page().locator(".work-card .action.main")).isDisabled();
    }

    @Test
    @Order(7)
    void a_signature_given_without_the_network_does_not_count_and_the_person_is_told() {
        fabricator.until("Alkaline degrease", "Your PIN signs");
        Tour.upright(ilka, "sign");
        ilka.network(false);
        link("Nothing you sign now counts");
        ilka.enter(DemoPerson.ILKA_FERROW.pin());
        link("Not taken");
        ilka.network(true);
        link("has to be done again");
        fabricator.answered("Your badge", () -> ilka.scan(LabelKind.BADGE, "P-0101"));
        assertThat(shift.traveller(lot).isSigned(new StepId("alkaline-degrease"))).isFalse();
        fabricator.act(fabricator.look());
        board.says(lot, "Rinse off the cleaner not signed", fabricator.signedAtMillis());
    }

    @Test
    @Order(8)
    void the_server_is_started_anew_in_the_middle_of_a_hold_and_the_card_comes_back() {
        fabricator.until("Dry", "Begin");
        fabricator.act(fabricator.look());
        server().stop();
        link("The server cannot be reached. Timers on this page run on.");
        assertRunsOn(ilka);
        ilka.page().evaluate("window.beforeTheRestart = true");
        server().open();
        ilka.page().waitForFunction("window.beforeTheRestart === undefined");
        ilka.ready().shows("Dry");
        assertRunsOn(ilka);
        bram.open("/board");
    }

    @Test
    @Order(9)
    void a_bare_hand_ends_the_clean_window_and_the_pieces_go_back() {
        fabricator.until("Gloved bagging", "Put the pieces into a sealed bag");
        assertThat(shift.traveller(lot).window()).isInstanceOf(Window.Open.class);
        ilka.press("Something touched it").press("Bare hand").hears("Written down").shows("Alkaline degrease");
        board.says(lot, "touched, not clean any more", ilka.pressedAtMillis());
        assertThat(shift.traveller(lot).superseded()).hasSizeGreaterThan(8);
        shift.othersWork(lot, action -> action instanceof NextAction.PutInto put
                && put.step().id().value().equals("bagging"));
        ilka.shows("Gloved bagging");
    }

    @Test
    @Order(10)
    void the_lot_is_bagged_stamped_ready_and_passed_in() {
        fabricator.until("Readiness inspection", "Waits for a stamp");
        sanna.open("/stamp/" + lot);
        Tour.across(sanna, "record");
        Locator accept = sanna.page().locator(".stamp-accept");
        accept.scrollIntoViewIfNeeded();
        Tour.across(sanna, "stamp");
        pressWithPin(sanna, accept, DemoPerson.SANNA_VEIT.pin(), "Accept and stamp");
        board.says(lot, "Ready to pass in", sanna.pressedAtMillis());
        Tour.upright(bram, "ready");
        fabricator.until("Final record review", "Waits for a stamp");
        board.says(lot, "Passed in", fabricator.signedAtMillis());
        assertThat(fabricator.signed()).containsExactly("Cut to length", "Cope the ends", "Deburr", "Check the fit",
                "Alkaline degrease", "Rinse off the cleaner", "Acid pickle", "Rinse off the acid", "Deionised rinse",
                "Water-break check", "Dry", "Solvent wipe", "White-cloth check", "Gloved bagging", "Pass in");
    }

    @Test
    @Order(11)
    void of_two_inspectors_who_stamp_at_once_one_wins_and_the_other_reads_who_it_was() {
        shift.inspector("P-0302", "Nel Aske", "816254", "BS-09");
        try (ShopTablet nel = new ShopTablet(server().url(), "job-second").signIn("P-0302", "816254")) {
            List<ShopTablet> both = List.of(sanna, nel);
            both.forEach(tablet -> tablet.open("/stamp/" + lot));
            sanna.page().locator(".stamp-accept").getByLabel("Your PIN").fill(DemoPerson.SANNA_VEIT.pin());
            nel.page().locator(".stamp-accept").getByLabel("Your PIN").fill("816254");
            both.forEach(tablet -> tablet.page().locator(".stamp-accept").getByLabel("Your PIN").blur());
            double together = System.currentTimeMillis() + 600.0;
            both.forEach(tablet -> tablet.page().evaluate("""
                    at => { setTimeout(() => document.querySelector('.stamp-accept .strong').click(),
                        at - Date.now()); }""", together));
            both.forEach(tablet -> tablet.page().locator("shop-verdict .verdict-word").waitFor());
            List<TravellerEvent.StepStamped> stamps = events(TravellerEvent.StepStamped.class).stream()
                    .filter(stamped -> stamped.step().equals(REVIEW)).toList();
            assertThat(stamps).hasSize(1);
            boolean sannaWon = stamps.getFirst().signature().signer().name().equals("Sanna Veit");
            told(sannaWon ? sanna : nel, "Stamped");
            ShopTablet second = sannaWon ? nel : sanna;
            told(second, "Already signed");
            assertThat(second.page().locator("shop-verdict")).containsText(sannaWon ? "Sanna Veit" : "Nel Aske");
        }
        assertThat(shift.traveller(lot).phase()).isEqualTo(Phase.CLOSED);
    }

    @Test
    @Order(12)
    void the_printed_record_tells_the_whole_story() throws IOException {
        sanna.open("/stamp/" + lot);
        assertThat(sanna.page().evaluate("'scanRan' in window || document.querySelector('img[src=x]') !== null"))
                .isEqualTo(false);
        String link = sanna.page().getByText("Print the record (PDF)").first().evaluate("link => link.href").toString();
        byte[] pdf = sanna.page().request().get(link).body();
        Tour.print(firstPage(pdf, 80), "print");
        assertThat(text(pdf)).contains(lot.value(), "HDF-5000-01", "H-4471", "DEMO", "Ilka Ferrow", "Bram Oduya",
                "Sanna Veit · stamp BS-07", "cope 0.4 mm short", "Bare hand", "SUPERSEDED", "Refused attempts",
                "Now: closed", "every hash was derived anew");
    }

    @Test
    @Order(13)
    void the_ledger_holds_what_happened_and_nothing_in_it_can_have_been_changed() {
        List<Entry> all = server().bean(Ledger.class).readAllAfter(0, Integer.MAX_VALUE);
        assertThat(ChainVerifier.verifyLedger(all)).isEmpty();
        assertThat(server().bean(Rebuild.class).compare()).isEmpty();
        Set<String> refused = new TreeSet<>();
        events(TravellerEvent.AttemptRefused.class).forEach(attempt -> attempt.rules()
                .forEach(rule -> refused.add(attempt.attempt() + ": " + rule.code())));
        assertThat(refused).contains("put in bin: wrong-bin-class", "scan: not-our-label", "start step: wrong-station",
                "stamp: already-signed");
        assertThat(events(TravellerEvent.HoldBegun.class)).hasSize(16);
    }
}

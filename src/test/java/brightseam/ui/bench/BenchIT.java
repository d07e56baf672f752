package brightseam.ui.bench;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.ShopServer;
import brightseam.browser.ShopTablet;
import brightseam.kernel.KitId;
import brightseam.kernel.StepId;
import brightseam.kernel.shell.DemoClock;
import brightseam.scan.LabelKind;
import brightseam.traveller.TravellerEvent;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.Travellers;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Fabricators at the bench, in a real browser, on the demo shop. */
class BenchIT {

    private static ShopServer server;

    /** Scanners are given more time than in the shop, so that a busy test machine does not tear a scan apart. */
    @BeforeAll
    static void open_the_demo_shop() {
        server = ShopServer.demo("--brightseam.scanner-burst-millis=1500", "--brightseam.scanner-idle-millis=2000");
    }

    @AfterAll
    static void close_the_shop() {
        server.close();
    }

    private static ShopTablet ilka() {
        return new ShopTablet(server.url(), "bench").signIn("P-0101", "482615");
    }

    private static Card lot(String kit, String part) {
        return server.bean(Travellers.class).ofKit(new KitId(kit)).stream()
                .filter(card -> card.traveller().part().partNumber().equals(part)).findFirst().orElseThrow();
    }

    private static Card anew(Card card) {
        return server.bean(Travellers.class).find(card.id()).orElseThrow();
    }

    private static <E extends TravellerEvent> List<E> events(Card card, Class<E> type) {
        return server.bean(Travellers.class).record(card.id()).stream().map(recorded -> recorded.event())
                .filter(type::isInstance).map(type::cast).toList();
    }

    private static void pass(long seconds) {
        server.bean(DemoClock.class).skip(Duration.ofSeconds(seconds));
    }

    @Test
    void a_wrong_pin_a_wrong_label_and_a_screen_of_another_role_are_told_in_words() {
        try (ShopTablet tablet = new ShopTablet(server.url(), "entry")) {
            tablet.open("/bench").shows("Sign in").look("sign-in");
            tablet.scan(LabelKind.BIN, "B-0101").hears("Wrong label");
            tablet.scan(LabelKind.BADGE, "P-0102").shows("Your PIN").look("pin");
            tablet.enter("111222").hears("Not recognised").look("wrong-pin").seen();
            tablet.enter("593726").page().waitForURL("**/bench");
            tablet.ready().showsNoCard().look("idle");
            tablet.open("/board/no-such-page").shows("No such page").look("not-found");
            tablet.open("/release").shows("Not your screen").look("not-allowed");
            tablet.press("To my screen").showsNoCard();
            tablet.press("Juno Castell").shows("Juno Castell").look("leave");
            tablet.press("Sign out and close the card").shows("Sign in");
        }
    }

    @Test
    void a_lot_is_cut_with_a_wrong_bin_and_a_wrong_station_refused_on_the_way() {
        Card lot = lot("K-0043", "HDF-3300-01");
        try (ShopTablet tablet = ilka()) {
            tablet.scan(LabelKind.TRAVELLER, lot.id().value()).shows("Cut to length").look("put-into");
            tablet.scan(LabelKind.BIN, "B-0308").hears("Wrong bin").look("wrong-bin").seen();
            tablet.scan(LabelKind.HEAT, lot.traveller().heat().value()).hears("Wrong label").seen();
            tablet.wedge("4006381333931").hears("Not our label").seen();
            tablet.scan(LabelKind.BIN, "B-0116").hears("Right bin").look("cautions");
            tablet.scan(LabelKind.STATION, "S-SAW-1").hears("Cautions first").seen();
            tablet.press("Cautions read").look("start");
            tablet.scan(LabelKind.STATION, "S-SAW-1").hears("Scan it first").look("not-scanned").seen();
            tablet.scan(LabelKind.SUPPLY, "G-0301").hears("Right tool").look("scanned");
            tablet.scan(LabelKind.STATION, "S-COPE-1").hears("Wrong station").seen();
            tablet.scan(LabelKind.STATION, "S-SAW-1").hears("Right station").look("look");
            tablet.press("In order").press("Enter").hears("Written down").look("sign");
            tablet.enter("482615").hears("Signed").shows("Cope the ends").look("next-step");
            assertThat(anew(lot).traveller().isSigned(new StepId("cut"))).isTrue();
            assertThat(events(lot, TravellerEvent.AttemptRefused.class)).hasSize(6);
            tablet.press("Report a problem").look("which-pieces");
            tablet.press("Piece 2").look("what-is-wrong").press("Other words").look("own-words");
            tablet.press("Back to the card").press("Put the card away").showsNoCard();
        }
    }

    @Test
    void a_basket_is_pickled_as_one_load_across_a_reload_and_another_tablet() {
        Card first = lot("K-0043", "HDF-3300-05");
        Card second = lot("K-0043", "HDF-3300-06");
        String basket = first.traveller().placement().orElseThrow().bin().value();
        try (ShopTablet tablet = ilka(); ShopTablet other = new ShopTablet(server.url(), "other")) {
            tablet.scan(LabelKind.BIN, basket).shows("Acid pickle").look("acid-cautions");
            assertThat(tablet.page().locator(".load")).containsText(first.id() + ", " + second.id());
            tablet.press("Cautions read").scan(LabelKind.STATION, "S-PICKLE-1").hears("Right station");
            tablet.enter("61").look("out-of-limits").press("take it back").hears("Taken back").seen();
            tablet.enter("31").hears("Written down").look("reading").enter("25.0").hears("Written down");
            tablet.page().locator("shop-key-pad .pad-label").getByText("Hydrofluoric").waitFor();
            tablet.enter("1.5").page().getByText("Lower the basket in").waitFor();
            tablet.look("begin-hold").press("The clock starts now").hears("Begun").look("holding");
            assertThat(tablet.page().locator(".action.main")).isDisabled();
            tablet.page().reload();
            tablet.ready().shows("Acid pickle").page().locator(".work-card .hold-digits").waitFor();
            other.signIn("P-0102", "593726").scan(LabelKind.TRAVELLER, second.id().value()).hears("Open");
            other.shows("Acid pickle");
            tablet.hears("Card moved").look("moved").seen();
            tablet.scan(LabelKind.BIN, basket).shows("Acid pickle");
            other.hears("Card moved");
            pass(75);
            assertThat(tablet.page().locator(".action.main")).isEnabled();
            tablet.look("may-come-out").press("Lifted out").hears("Time kept").shows("Rinse off the acid");
            tablet.look("hurry");
            rinseAndSign(tablet, second);
            for (Card card : List.of(anew(first), anew(second))) {
                assertThat(card.traveller().isSigned(new StepId("acid-pickle"))).isTrue();
                assertThat(card.traveller().openNonconformances()).isEmpty();
            }
            assertThat(events(first, TravellerEvent.StepSigned.class).getLast().loadWith())
                    .containsExactly(second.id());
        }
    }

    private static void rinseAndSign(ShopTablet tablet, Card second) {
        tablet.press("Cautions read").scan(LabelKind.STATION, "S-RINSE-2").hears("Right station").look("rinsing");
        pass(125);
        assertThat(tablet.page().locator(".action.main")).isEnabled();
        tablet.press("Lifted out").shows("Acid pickle").look("sign-load");
        tablet.enter("123789").hears("Not recognised").seen();
        tablet.enter("482615").hears("Signed").shows("Rinse off the acid").look("after-signature");
        tablet.enter("120").hears("Written down").press("Correct a reading").press("Rinse water").enter("130");
        tablet.press("Keyed wrong").look("correction").enter("482615").hears("Corrected").look("corrected");
        tablet.enter("482615").hears("Signed").shows("Deionised rinse");
        assertThat(anew(second).traveller().run(new StepId("pickle-rinse")).orElseThrow().readings().getFirst()
                .current()).isEqualByComparingTo("130");
    }

    @Test
    void a_touch_sends_clean_pieces_back_and_says_so() {
        Card collars = lot("K-0042", "HDF-3200-11");
        try (ShopTablet tablet = ilka()) {
            tablet.scan(LabelKind.TRAVELLER, collars.id().value()).shows("Readiness inspection").look("await-stamp");
            tablet.press("Something touched it").look("touch").press("Bare hand").hears("Written down");
            tablet.shows(anew(collars).currentStep().orElseThrow().title()).look("after-touch");
            assertThat(events(collars, TravellerEvent.TouchReported.class)).hasSize(1);
        }
    }

    @Test
    void a_stopped_traveller_says_what_is_wrong_and_whom_to_call() {
        Card mast = lot("K-0042", "HDF-3200-01");
        try (ShopTablet tablet = ilka()) {
            tablet.scan(LabelKind.TRAVELLER, mast.id().value()).shows("In quarantine").look("quarantine");
            assertThat(tablet.page().locator(".lines")).containsText("longest hold 5 min");
        }
    }
}

package brightseam.ui.bench;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.bins.shell.Bins;
import brightseam.browser.ShopServer;
import brightseam.browser.ShopTablet;
import brightseam.demo.DemoPerson;
import brightseam.demo.Lots;
import brightseam.demo.Story;
import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.DemoClock;
import brightseam.procedure.BinClass;
import brightseam.scan.LabelKind;
import brightseam.traveller.NextAction;
import brightseam.traveller.Nonconformance.Cause;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerEvent;
import brightseam.traveller.TravellerEvent.StepSigned;
import brightseam.traveller.shell.Travellers;
import brightseam.ui.board.DeskBrowser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Loads at the bench and on the line's page, in a real browser: two procedures in one basket, three loads at once. */
class LoadsIT {

    private static final StepId DEGREASE = new StepId("alkaline-degrease");
    private static final StepId RINSE = new StepId("degrease-rinse");
    private static final DemoPerson ILKA = DemoPerson.ILKA_FERROW;

    private static ShopServer server;
    private static int kits;

    @BeforeAll
    static void open_the_shop() {
        server = ShopServer.demo("--brightseam.demo-past=false", "--brightseam.scanner-burst-millis=1500",
                "--brightseam.scanner-idle-millis=2000");
    }

    @AfterAll
    static void close_the_shop() {
        server.close();
    }

    @Test
    void two_procedures_go_through_one_basket_and_a_piece_leaves_it_in_the_middle_of_the_soak() {
        List<TravellerId> load = lots(tube(), fitting());
        load.forEach(lot -> story().advance(List.of(lot), LoadsIT::isBasketDue));
        String basket = basket();
        try (ShopTablet tablet = ilka()) {
            tablet.scan(LabelKind.TRAVELLER, load.getFirst().value()).shows("Alkaline degrease");
            tablet.scan(LabelKind.BIN, basket).hears("Right bin");
            tablet.scan(LabelKind.TRAVELLER, load.getLast().value()).hears("Open");
            tablet.scan(LabelKind.BIN, basket).hears("Right bin");
            assertThat(tablet.page().locator(".load")).containsText(load.getFirst() + ", " + load.getLast());
            tablet.press("Cautions read").look("two-procedures");
            tablet.scan(LabelKind.STATION, "S-DEGREASE-1").hears("Right station");
            tablet.enter("70").hears("Written down").press("The clock starts now").hears("Begun");
            assertThat(tablet.page().locator(".hold-limits")).containsText("at least 15 min 00 s, at most 30 min 00 s");
            tablet.look("held");
            pass(240);
            takeOut(tablet, load.getFirst());
            pass(10 * 60);
            assertThat(tablet.page().locator(".action.main")).isEnabled();
            tablet.press("Lifted out").hears("Time kept").press("Gloves on");
            tablet.scan(LabelKind.STATION, "S-RINSE-1").hears("Right station");
            pass(185);
            assertThat(tablet.page().locator(".action.main")).isEnabled();
            tablet.press("Lifted out").shows("Alkaline degrease").look("sign-both").enter(ILKA.pin()).hears("Signed");
            tablet.shows("Rinse off the cleaner").enter("120").hears("Written down");
            tablet.enter(ILKA.pin()).hears("Signed");
        }
        assertThat(signed(load.getFirst(), RINSE).loadWith()).containsExactly(load.getLast());
        assertThat(signed(load.getLast(), RINSE).signature().signer())
                .isEqualTo(signed(load.getFirst(), RINSE).signature().signer());
        assertThat(signed(load.getLast(), RINSE).signature().content()).as("each is bound to its own content")
                .isPresent().isNotEqualTo(signed(load.getFirst(), RINSE).signature().content());
        assertThat(signed(load.getLast(), RINSE).at()).isEqualTo(signed(load.getFirst(), RINSE).at());
    }

    private static void takeOut(ShopTablet tablet, TravellerId lot) {
        String rejects = basket();
        tablet.press("Take pieces out").look("out-of-which").press(lot.value()).press("Piece 2").look("which-pieces");
        tablet.press("Take out piece 2").look("why-out").press("Reject: dent").look("into-which-bin");
        tablet.scan(LabelKind.BIN, rejects).page().getByText("Your PIN signs").waitFor();
        tablet.look("out-with-pin").enter(ILKA.pin()).hears("Taken out").look("taken-out");
        assertThat(tablet.page().locator(".hold-limits").first()).isVisible();
        Traveller child = traveller(new TravellerId(lot + ".1"));
        assertThat(child.pieces()).containsExactly(2);
        assertThat(child.placement().orElseThrow().bin().value()).isEqualTo(rejects);
        assertThat(child.openNonconformances()).extracting(nc -> nc.cause())
                .containsExactly(Cause.HOLD_CUT_SHORT, Cause.REPORTED);
        assertThat(traveller(lot).run(DEGREASE).orElseThrow().isHolding()).isTrue();
        story().advance(List.of(child.id()), NextAction.AwaitDisposition.class::isInstance);
    }

    @Test
    void three_loads_run_at_once_and_what_turns_next_stands_largest() {
        pass(3_600);
        List<TravellerId> drying = lots(tube());
        List<TravellerId> pickled = lots(tube());
        List<TravellerId> soaking = lots(tube());
        story().advance(soaking, LoadsIT::isBasketDue);
        story().advance(pickled, LoadsIT::isBasketDue);
        story().advance(drying, held("dry"));
        story().advance(pickled, new StepId("acid-pickle"));
        story().advance(soaking, held("alkaline-degrease"));
        story().advance(pickled, held("acid-pickle"));
        try (ShopTablet tablet = ilka(); DeskBrowser lead = new DeskBrowser(server, DemoPerson.BRAM_ODUYA)) {
            lead.open("/line");
            assertThat(tablet.page().locator(".load-view .running-hold")).hasCount(3);
            assertThat(tablet.page().locator(".load-view .first")).containsText("Acid pickle");
            tablet.look("load-view");
            assertThat(place(lead, "S-PICKLE-1")).containsText("Held");
            assertThat(place(lead, "S-DI-1")).containsText("Free");
            assertThat(place(lead, "S-DRYER-2")).containsText("Out of use");
            lead.look("line");
            tablet.page().locator(".load-view .first .running-clock").click();
            tablet.shows("Acid pickle").look("load-view-beside");
            pass(6 * 60);
            lead.shows("OVERRUN in 1 place").look("line-overrun");
            tablet.press("Lifted out").hears("Time kept").press("Put the card away");
            assertThat(tablet.page().locator(".load-view .first")).containsText("Rinse off the acid");
            picture(tablet.page(), "loads-gap-first");
            lead.shows("Rinse off the acid");
        }
    }

    private static Locator place(DeskBrowser lead, String station) {
        return lead.page().locator("tr", new Page.LocatorOptions()
                .setHas(lead.page().locator("[data-station='" + station + "']")));
    }

    private static Predicate<NextAction> held(String step) {
        return action -> action instanceof NextAction.Holding holding && holding.step().id().value().equals(step);
    }

    /** A gap runs: there is no time for a closer look. */
    private static void picture(Page page, String name) {
        page.screenshot(new Page.ScreenshotOptions().setFullPage(true)
                .setPath(Path.of("target/screenshots/" + name + "-1280x800.png")));
    }

    private static boolean isBasketDue(NextAction action) {
        return action instanceof NextAction.PutInto put && put.step().id().equals(DEGREASE);
    }

    private static ShopTablet ilka() {
        return new ShopTablet(server.url(), "loads").signIn(ILKA.badge().value(), ILKA.pin());
    }

    private static String basket() {
        return server.bean(Bins.class).all().stream()
                .filter(bin -> bin.binClass() == BinClass.PROCESS_BASKET && bin.inside().isEmpty())
                .findFirst().orElseThrow().id().value();
    }

    private static Lots.Lot tube() {
        return new Lots.Lot("HDF-9600-01", "Strut", 4, new HeatId("H-4471"), "TUBE");
    }

    private static Lots.Lot fitting() {
        return new Lots.Lot("HDF-9600-02", "Foot", 3, new HeatId("H-2208"), "FITTING");
    }

    private static List<TravellerId> lots(Lots.Lot... lots) {
        KitId kit = new KitId("K-96" + String.format("%02d", ++kits));
        server.bean(Lots.class).open(kit, "Loads", Duration.ofDays(2), List.of(lots));
        return server.bean(Lots.class).release(kit, List.of(lots));
    }

    private static StepSigned signed(TravellerId id, StepId step) {
        return server.bean(Travellers.class).record(id).stream().map(recorded -> recorded.event())
                .filter(TravellerEvent.StepSigned.class::isInstance).map(StepSigned.class::cast)
                .filter(event -> event.step().equals(step)).findFirst().orElseThrow();
    }

    private static Traveller traveller(TravellerId id) {
        return server.bean(Travellers.class).find(id).orElseThrow().traveller();
    }

    private static Story story() {
        return server.bean(Story.class);
    }

    private static void pass(long seconds) {
        server.bean(DemoClock.class).skip(Duration.ofSeconds(seconds));
    }
}

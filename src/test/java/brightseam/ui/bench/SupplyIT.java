package brightseam.ui.bench;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.ShopServer;
import brightseam.browser.ShopTablet;
import brightseam.demo.DemoPerson;
import brightseam.demo.Lots;
import brightseam.demo.Lots.Lot;
import brightseam.demo.Story;
import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.scan.LabelKind;
import brightseam.traveller.Contact;
import brightseam.traveller.NextAction;
import brightseam.traveller.TravellerEvent;
import brightseam.traveller.Window;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.Travellers;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What touches filler rods is scanned at the bench, refused where it is not fit, and found again in the record. */
class SupplyIT {

    private static final KitId KIT = new KitId("K-0060");
    private static final List<Lot> RODS = List.of(
            new Lot("HDF-6000-90", "Spare leg, filler rods", 12, new HeatId("H-0917"), "FILLER"));

    private static ShopServer server;
    private static TravellerId rods;

    @BeforeAll
    static void release_a_lot_and_bring_it_to_the_wipe_bench() {
        server = ShopServer.demo("--brightseam.demo-past=false", "--brightseam.scanner-burst-millis=1500",
                "--brightseam.scanner-idle-millis=2000");
        server.bean(Lots.class).open(KIT, "Spare leg", Duration.ofHours(30), RODS);
        rods = server.bean(Lots.class).release(KIT, RODS).getFirst();
        server.bean(Story.class).advance(rods, new StepId("solvent-wipe"));
    }

    @AfterAll
    static void close_the_shop() {
        server.close();
    }

    private static Card card() {
        return server.bean(Travellers.class).find(rods).orElseThrow();
    }

    private static <E extends TravellerEvent> List<E> events(Class<E> type) {
        return server.bean(Travellers.class).record(rods).stream().map(recorded -> recorded.event())
                .filter(type::isInstance).map(type::cast).toList();
    }

    @Test
    void what_is_not_fit_is_refused_and_what_is_right_is_ticked_and_recorded() {
        try (ShopTablet tablet = new ShopTablet(server.url(), "supply").signIn("P-0101", "482615")) {
            tablet.scan(LabelKind.TRAVELLER, rods.value()).shows("Solvent wipe").press("Cautions read");
            tablet.look("to-scan");
            tablet.scan(LabelKind.SUPPLY, "G-0212").hears("Expired").look("expired").seen();
            tablet.scan(LabelKind.SUPPLY, "G-0103").hears("Wrong one").look("wrong-gloves").seen();
            tablet.scan(LabelKind.SUPPLY, "G-9999").hears("Not registered").seen();
            tablet.scan(LabelKind.SUPPLY, "G-0101").hears("Right gloves");
            tablet.scan(LabelKind.STATION, "S-WIPE-1").hears("Scan it first").seen();
            assertThat(tablet.page().locator(".scans .ticked")).hasCount(1);
            tablet.scan(LabelKind.SUPPLY, "G-0201").hears("Right cloth").look("half-scanned");
            tablet.scan(LabelKind.SUPPLY, "G-0211").hears("Right solvent").look("scanned");
            tablet.scan(LabelKind.STATION, "S-WIPE-1").hears("Right station");
            assertThat(events(TravellerEvent.ContactMade.class).getLast().contacts()).extracting(Contact::label)
                    .containsExactly("G-0101", "G-0201", "G-0211");
            assertThat(events(TravellerEvent.AttemptRefused.class)).flatExtracting(TravellerEvent.AttemptRefused::rules)
                    .extracting(TravellerEvent.AttemptRefused.BrokenRule::code).containsExactly("supply-expired",
                            "wrong-supply", "supply-unknown", "contact-not-scanned", "contact-not-scanned");
            glovesTouchTheTablet(tablet);
            recordTells(DemoPerson.SANNA_VEIT);
        }
    }

    /** Two touches say it; the pieces stay clean and the next gloves are scanned in the middle of the step. */
    private static void glovesTouchTheTablet(ShopTablet tablet) {
        server.bean(Story.class).advance(List.of(rods), NextAction.CloseBin.class::isInstance);
        assertThat(card().traveller().window()).isInstanceOf(Window.Open.class);
        tablet.shows("Gloved bagging").press("My gloves touched something").look("gloves-touched");
        tablet.press("Tablet").hears("Written down").look("gloves-spent");
        tablet.scan(LabelKind.SUPPLY, "G-0101").hears("Wrong one").seen();
        tablet.scan(LabelKind.SUPPLY, "G-0103").hears("Right gloves");
        assertThat(card().traveller().window()).isInstanceOf(Window.Open.class);
        assertThat(card().traveller().glovesSpent()).isFalse();
    }

    private static void recordTells(DemoPerson inspector) {
        try (ShopTablet desk = new ShopTablet(server.url(), "supply-desk")
                .signIn(inspector.badge().value(), inspector.pin())) {
            desk.open("/stamp/" + rods);
            assertThat(desk.page().locator("body")).containsText("acetone G-0211, OA-7714");
            assertThat(desk.page().locator("body")).containsText("Gloves changed, they had touched: Tablet");
        }
    }
}

package brightseam.ui.trace;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.ShopServer;
import brightseam.browser.ShopTablet;
import brightseam.demo.DemoPerson;
import brightseam.demo.Lots;
import brightseam.demo.Story;
import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Outcome;
import brightseam.people.Recognition;
import brightseam.people.Signer;
import brightseam.people.shell.Authenticator;
import brightseam.scan.LabelKind;
import brightseam.traveller.Disposition;
import brightseam.traveller.Phase;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.InspectorActions;
import brightseam.traveller.shell.TravellerActions;
import brightseam.traveller.shell.Travellers;
import brightseam.ui.board.DeskBrowser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A basket proves dirty: who was in it, suspicion on every screen at once, and lifted again with one signature. */
class TraceIT {

    private static final KitId KIT = new KitId("K-0099");
    private static final HeatId HEAT = new HeatId("H-4471");
    private static final LocatorAssertions.ContainsTextOptions SOON =
            new LocatorAssertions.ContainsTextOptions().setTimeout(5_000);

    private static ShopServer shop;
    private static DeskBrowser bram;
    private static DeskBrowser sanna;
    private static List<TravellerId> wet;
    private static TravellerId closed;

    @BeforeAll
    static void open_a_shop_with_two_lots_in_one_basket_and_one_that_is_closed() {
        shop = ShopServer.demo("--brightseam.demo-past=false", "--brightseam.greeting=false",
                "--brightseam.scanner-burst-millis=900", "--brightseam.scanner-idle-millis=1000");
        Lots lots = shop.bean(Lots.class);
        List<Lots.Lot> list = List.of(lot("Foot strut"), lot("Foot brace"), lot("Foot plate tube"));
        lots.open(KIT, "Lander 9, feet", Duration.ofHours(30), list);
        List<TravellerId> released = lots.releaseForTheBench(KIT, list);
        closed = released.get(2);
        shop.bean(Story.class).finish(closed);
        wet = released.subList(0, 2);
        shop.bean(Story.class).advance(wet, new StepId("solvent-wipe"));
        bram = new DeskBrowser(shop, DemoPerson.BRAM_ODUYA);
        sanna = new DeskBrowser(shop, DemoPerson.SANNA_VEIT);
    }

    @AfterAll
    static void close_it() {
        bram.close();
        sanna.close();
        shop.close();
    }

    @Test
    void a_basket_is_traced_put_under_suspicion_seen_everywhere_and_lifted() {
        String basket = basket();
        sanna.open("/board");
        Locator row = sanna.page().locator("[data-traveller='" + wet.getFirst() + "']");
        try (ShopTablet bench = new ShopTablet(shop.url(), "ilka");
                ShopTablet lead = new ShopTablet(shop.url(), "bram")) {
            bench.signIn(DemoPerson.ILKA_FERROW.badge().value(), DemoPerson.ILKA_FERROW.pin());
            bench.scan(LabelKind.TRAVELLER, wet.getFirst().value()).hears("Open");
            lead.signIn(DemoPerson.BRAM_ODUYA.badge().value(), DemoPerson.BRAM_ODUYA.pin()).open("/trace");
            lead.scan(LabelKind.BIN, basket);
            lead.page().waitForURL("**/trace?kind=bin&label=" + basket);
            assertThat(lead.page().locator(".trace-counts")).containsText("6 pieces of 3 travellers, 1 kit");

            bram.open("/trace?kind=bin&label=" + basket).shows("Foot strut").look("trace-basket");
            picture("basket");
            assertThat(bram.page().locator("[data-traveller]")).hasCount(3);
            suspect("Basket found with shop dirt in it").hears("Under suspicion")
                    .shows("3 travellers with 6 pieces: 2 on the way, 0 in the chamber, 1 closed");
            assertThat(row).containsText("Suspect: quarantine", SOON);
            assertThat(row).containsText("Basket found with shop dirt in it");
            bench.shows("Suspect: in quarantine");
            assertThat(bram.page().locator(".trace-answer")).containsText("suspect, in quarantine");
            suspect("Basket found with shop dirt in it").hears("Nothing to mark")
                    .shows("3 already suspect for this reason");
        }
        sanna.open("/trace").look("trace-suspects");
        lift();
        sanna.open("/board");
        assertThat(row).not().containsText("Suspect", new LocatorAssertions.ContainsTextOptions().setTimeout(2_000));
    }

    @Test
    void a_piece_is_traced_to_everything_that_touched_it_and_to_what_was_beside_it() {
        bram.open("/trace?kind=traveller&label=" + wet.getFirst() + "&piece=2")
                .shows("What touched piece 2 of " + wet.getFirst()).look("trace-piece");
        picture("piece");
        Locator answer = bram.page().locator(".trace-answer");
        for (String thing : List.of("heat " + HEAT, "kit K-0099", "station S-PICKLE-1", "bin " + basket(),
                "person " + DemoPerson.ILKA_FERROW.badge())) {
            assertThat(answer).containsText(thing);
        }
        assertThat(answer.locator("table").last()).containsText(wet.getLast().value());
        answer.getByRole(AriaRole.LINK, new Locator.GetByRoleOptions().setName("station S-PICKLE-1")).first().click();
        bram.page().waitForURL("**/trace?kind=station&label=S-PICKLE-1");
        bram.shows("What it touched").shows(closed.value());
        Path csv = bram.page().waitForDownload(() -> bram.page().getByText("Save every contact as CSV").click()).path();
        assertThat(csv).content().contains("S-PICKLE-1").contains(closed + "," + closed);
        bram.open("/trace?kind=nothing&label=B-1").hears("Check the form");
    }

    @Test
    void a_heat_reaches_what_is_closed_and_the_kit_says_so_and_rework_takes_it_through_everything_again() {
        bram.open("/trace?kind=heat&label=" + HEAT + "&until=1999-01-01T00:00").shows("Nothing.");
        bram.open("/trace?kind=heat&label=" + HEAT);
        suspect("Certificate withdrawn by the maker").hears("Under suspicion").shows("1 closed");
        bram.open("/board/kit/" + KIT).shows("SUSPECT:").shows("closed").look("trace-kit");
        assertThat(bram.page().locator("[data-traveller='" + closed + "']")).containsText("Suspect: quarantine");
        sanna.open("/stamp/" + closed).shows("Certificate withdrawn by the maker");
        lift();
        assertThat(card().traveller().hasEnded()).isTrue();
        Actor desk = new Actor(DemoPerson.SANNA_VEIT.badge(), "desk");
        assertThat(shop.bean(TravellerActions.class).markSuspect(desk, Map.of(closed,
                Optional.of(new StepId("acid-pickle"))), "Fill spent", inspector())).isInstanceOf(Outcome.Done.class);
        assertThat(shop.bean(InspectorActions.class).decideTogether(desk, Map.of(closed,
                card().traveller().openNonconformances().getFirst().number()), Disposition.REWORK,
                Optional.of(new StepId("alkaline-degrease")), "Clean again", inspector()))
                .isInstanceOf(Outcome.Done.class);
        assertThat(card().traveller().phase()).isEqualTo(Phase.ACTIVE);
        shop.bean(Story.class).finish(closed);
        assertThat(card().traveller().phase()).isEqualTo(Phase.CLOSED);
    }

    private static void picture(String name) {
        bram.page().locator(".shop-chart").screenshot(new Locator.ScreenshotOptions()
                .setPath(Path.of("target/screenshots/trace-picture-" + name + ".png")));
    }

    private DeskBrowser suspect(String reason) {
        return bram.fill("What proved bad, or may have (goes into every record)", reason)
                .fill("Your PIN", DemoPerson.BRAM_ODUYA.pin()).press("Put all of it under suspicion");
    }

    private static void lift() {
        sanna.open("/trace").shows("Decide and sign for all that are ticked")
                .picks("use as is").fill("Reason (goes into every record)", "Looked at each under the lamp: clean.")
                .fill("Your PIN", DemoPerson.SANNA_VEIT.pin()).press("Decide and sign for all that are ticked")
                .hears("Decided").shows("Nothing is under suspicion");
    }

    private static String basket() {
        return shop.bean(brightseam.trace.shell.Traces.class).touches(wet.getFirst()).stream()
                .filter(touch -> touch.thing().kind() == brightseam.trace.ThingKind.BIN
                        && touch.step().filter(new StepId("acid-pickle")::equals).isPresent()
                        || touch.thing().kind() == brightseam.trace.ThingKind.BIN
                        && touch.step().filter(new StepId("alkaline-degrease")::equals).isPresent())
                .findFirst().orElseThrow().thing().label();
    }

    private static Card card() {
        return shop.bean(Travellers.class).find(closed).orElseThrow();
    }

    private static Signer inspector() {
        return ((Recognition.Recognised) shop.bean(Authenticator.class).signing("desk",
                DemoPerson.SANNA_VEIT.badge(), DemoPerson.SANNA_VEIT.pin())).signer();
    }

    private static Lots.Lot lot(String description) {
        return new Lots.Lot("HDF-9100-01", description, 2, HEAT, "TUBE");
    }
}

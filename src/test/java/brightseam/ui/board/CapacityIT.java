package brightseam.ui.board;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.bins.BinRefusal;
import brightseam.bins.Measure;
import brightseam.bins.shell.Bins;
import brightseam.browser.ShopServer;
import brightseam.demo.DemoPerson;
import brightseam.demo.Lots;
import brightseam.demo.Story;
import brightseam.kernel.BinId;
import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kernel.Refusal;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Outcome;
import brightseam.material.shell.Heats;
import brightseam.part.shell.Parts;
import brightseam.people.Recognition;
import brightseam.people.Signer;
import brightseam.people.shell.Authenticator;
import brightseam.procedure.BinClass;
import brightseam.traveller.NextAction;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.InspectorActions;
import brightseam.traveller.shell.TravellerActions;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A basket that takes only so much, filled at the bench: by the shapes that the lead keyed in, and not without. */
class CapacityIT {

    private static final BinId BASKET = new BinId("B-0202");
    private static final Actor ILKA = new Actor(DemoPerson.ILKA_FERROW.badge(), "bench-1");

    private static ShopServer shop;
    private static DeskBrowser bram;

    @BeforeAll
    static void open_a_shop_without_a_past() {
        shop = ShopServer.demo("--brightseam.demo-past=false");
        bram = new DeskBrowser(shop, DemoPerson.BRAM_ODUYA);
    }

    @AfterAll
    static void close_it() {
        bram.close();
        shop.close();
    }

    /** 3 x (119 093 + 378) and 2 x (178 639 + 378) square millimetres of mantles and ends: 0.3584 and 0.3580 m2. */
    @Test
    void a_basket_takes_what_its_limits_and_the_shapes_of_the_parts_allow() {
        List<TravellerId> lots = lotsThatWaitForTheBasket();
        TravellerId struts = lots.getFirst();
        TravellerId rails = lots.getLast();
        limitTheBasket();
        assertThat(refusals(List.of(struts))).containsExactly(
                new BinRefusal.BasketSizeUnknown(BASKET, Measure.AREA, List.of(struts), List.of("CAP-01")),
                new BinRefusal.BasketSizeUnknown(BASKET, Measure.MASS, List.of(struts), List.of("CAP-01")));
        giveTheShapes();
        assertThat(refusals(lots)).containsExactly(new BinRefusal.BasketOverArea(
                BASKET, new BigDecimal("0.5"), new BigDecimal("0.7164"), lots));
        done(shop.bean(TravellerActions.class).putInBin(ILKA, List.of(struts), BASKET));
        assertThat(refusals(List.of(rails))).hasSize(1).first().isInstanceOf(BinRefusal.BasketOverArea.class);
        Actor lead = new Actor(DemoPerson.BRAM_ODUYA.badge(), "bench-1");
        done(shop.bean(InspectorActions.class).setApart(lead, struts, List.of(2), "scratched", bramSigns()));
        assertThat(shop.bean(Bins.class).inside(BASKET)).hasSize(2);
        bram.open("/shop/bins").shows("at most 4 travellers, 40 pieces").look("bin-capacity");
    }

    private static List<TravellerId> lotsThatWaitForTheBasket() {
        HeatId tube = shop.bean(Heats.class).all().stream()
                .filter(heat -> heat.form().equals("tube") && heat.grade().equals("9") && !heat.isOnHold())
                .findFirst().orElseThrow().id();
        List<Lots.Lot> lots = List.of(new Lots.Lot("CAP-01", "Strut", 3, tube, "TUBE"),
                new Lots.Lot("CAP-02", "Rail", 2, tube, "TUBE"));
        KitId kit = new KitId("K-71");
        shop.bean(Lots.class).open(kit, "Capacity", Duration.ofDays(2), lots);
        List<TravellerId> released = shop.bean(Lots.class).release(kit, lots);
        shop.bean(Story.class).advance(released, action ->
                action instanceof NextAction.PutInto put && put.classes().contains(BinClass.PROCESS_BASKET));
        return released;
    }

    private static void limitTheBasket() {
        bram.open("/shop/bins").press("Capacity of " + BASKET).fill("Pieces at once", "40").fill("Area, m²", "0")
                .fill("Mass, kg", "8").press("Set capacity").hears("Check the form");
        bram.fill("Area, m²", "0.5").press("Set capacity").hears("Capacity set");
    }

    private static void giveTheShapes() {
        bram.open("/shop/parts").shows("NO SHAPE YET").look("parts-without").press("Give CAP-01");
        bram.fill("Outside diameter, mm", "38.1").fill("Wall, mm", "20").fill("Length, mm", "520").press("Give shape")
                .hears("Check the form").look("parts-refused");
        bram.fill("Wall, mm", "1.65").fill("Weight of one piece, g", "0.44").press("Give shape")
                .hears("Weight and shape");
        bram.fill("Weight of one piece, g", "436").press("Give shape").hears("Shape given")
                .shows("tube 38.1 x 1.65\u00a0mm, 520\u00a0mm long, open");
        bram.press("Give CAP-02").fill("Outside diameter, mm", "38.1").fill("Wall, mm", "1.65")
                .fill("Length, mm", "780").press("Give shape").hears("CAP-02: tube").press("Change HDF-3100-10");
        assertThat(bram.page().getByLabel("Volume of metal, cm³").inputValue()).isEqualTo("128");
        bram.look("parts");
        assertThat(shop.bean(Parts.class).massKilograms("CAP-01", 3, "9")).contains(3 * 0.436);
    }

    private static List<Refusal> refusals(List<TravellerId> load) {
        Outcome<?> outcome = shop.bean(TravellerActions.class).putInBin(ILKA, load, BASKET);
        return outcome instanceof Outcome.Refused<?> refused ? refused.refusals() : List.of();
    }

    private static void done(Outcome<?> outcome) {
        assertThat(outcome).isInstanceOf(Outcome.Done.class);
    }

    private static Signer bramSigns() {
        DemoPerson bramOduya = DemoPerson.BRAM_ODUYA;
        return ((Recognition.Recognised) shop.bean(Authenticator.class)
                .signing("bench-1", bramOduya.badge(), bramOduya.pin())).signer();
    }
}

package brightseam.browser;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.demo.Crew;
import brightseam.demo.DemoPerson;
import brightseam.demo.Lots;
import brightseam.demo.Story;
import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.DemoClock;
import brightseam.ledger.Outcome;
import brightseam.line.BathQuantity;
import brightseam.scan.LabelKind;
import brightseam.traveller.Nonconformance;
import brightseam.traveller.Traveller;
import brightseam.traveller.shell.ProcessControl;
import brightseam.traveller.shell.Travellers;
import brightseam.ui.board.DeskBrowser;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * A day at the line with three loads that overlap: the plan tells the bench what is next, one load stays in too long, a
 * bath is found out of limits with what went through it, and the plan is made anew each time.
 */
class LineDayIT {

    private static final StepId DEGREASE = new StepId("alkaline-degrease");
    private static final StepId DRY = new StepId("dry");
    private static final StationId ACID = new StationId("S-PICKLE-1");

    private static ShopServer shop;
    private static int samples;

    @BeforeAll
    static void open() {
        shop = ShopServer.demo("--brightseam.demo-past=false", "--brightseam.plan-time=PT3S",
                "--brightseam.line-layout=src/test/resources/line-all-day.yaml",
                "--brightseam.scanner-burst-millis=900", "--brightseam.scanner-idle-millis=1000");
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    @Test
    void three_loads_an_overrun_a_locked_bath_and_a_plan_that_follows() {
        List<TravellerId> lots = lots();
        try (DeskBrowser bram = new DeskBrowser(shop, DemoPerson.BRAM_ODUYA);
                ShopTablet ilka = new ShopTablet(shop.url(), "line-day").signIn(
                        DemoPerson.ILKA_FERROW.badge().value(), DemoPerson.ILKA_FERROW.pin())) {
            bram.open("/plan").choose("What the plan is made for", "Everything as soon as it can be")
                    .press("Plan like this").hears("Planned anew");
            intoTheTank(ilka, lots.get(0));
            pass(Duration.ofMinutes(4));
            intoTheTank(ilka, lots.get(1));
            bram.shows(basket(lots.get(0)) + " into Rinse off the cleaner").shows(basket(lots.get(2)) + " into");
            bram.look("line-day-plan");
            Tour.across(bram.page(), "plan");
            ilka.page().locator(".by-plan").getByText(" into ").first().waitFor();
            ilka.look("two-loads");

            overrun(bram, lots);
            lockedBath(bram, lots);
        }
    }

    /** The first load goes on with somebody else; the second is forgotten in the tank. */
    private static void overrun(DeskBrowser bram, List<TravellerId> lots) {
        shop.bean(Story.class).advance(lots.get(0), DRY);
        pass(Duration.ofMinutes(31));
        bram.open("/board").shows("Alkaline degrease overrun");
        assertThat(traveller(lots.get(1)).openNonconformances()).extracting(Nonconformance::cause)
                .containsExactly(Nonconformance.Cause.HOLD_OVERRUN);
        bram.open("/plan").shows(basket(lots.get(1)) + " into Rinse off the cleaner");
    }

    /** What went through the bath since its last good sample is suspect; what still has to is planned no further. */
    private static void lockedBath(DeskBrowser bram, List<TravellerId> lots) {
        analyse("0.8");
        assertThat(traveller(lots.get(0)).isSuspect()).isTrue();
        assertThat(traveller(lots.get(2)).isSuspect()).isFalse();
        bram.shows("S-PICKLE-1 is locked or out of use.").look("line-day-no-plan");
        bram.open("/board").shows("suspect: Bath of S-PICKLE-1");
        bram.open("/plan");
        analyse("1.6");
        bram.shows(basket(lots.get(2)) + " into Acid pickle").look("line-day-planned-anew");
    }

    private static void intoTheTank(ShopTablet bench, TravellerId lot) {
        Fabricator hands = new Fabricator(bench, DemoPerson.ILKA_FERROW.pin(), Map.of(), Map.of(), LineDayIT::pass);
        bench.scan(LabelKind.BIN, basket(lot)).hears("Open");
        for (Fabricator.Face face = hands.look(); face.hold().isEmpty(); face = hands.look()) {
            hands.act(face);
        }
        bench.press("Put the card away");
    }

    private static List<TravellerId> lots() {
        KitId kit = new KitId("K-LINE");
        List<Lots.Lot> lots = IntStream.rangeClosed(1, 3).mapToObj(lot -> new Lots.Lot(
                "HDF-88-0" + lot, "Tube of load " + lot, 3, new HeatId("H-4471"), "TUBE")).toList();
        shop.bean(Lots.class).open(kit, "Three loads", Duration.ofHours(30), lots);
        List<TravellerId> released = shop.bean(Lots.class).release(kit, lots);
        released.forEach(id -> shop.bean(Story.class).advance(id, DEGREASE));
        return released;
    }

    private static void analyse(String hydrofluoric) {
        Crew crew = shop.bean(Crew.class);
        assertThat(shop.bean(ProcessControl.class).enterAnalysis(crew.actor(DemoPerson.TESSA_QUARLE), ACID,
                new ProcessControl.Entered("D-" + ++samples, "titration", Duration.ZERO, new TreeMap<>(Map.of(
                        BathQuantity.NITRIC_ACID, new BigDecimal("25"),
                        BathQuantity.HYDROFLUORIC_ACID, new BigDecimal(hydrofluoric),
                        BathQuantity.TEMPERATURE, new BigDecimal("31"),
                        BathQuantity.DISSOLVED_TITANIUM, new BigDecimal("7"))), List.of()),
                crew.signer(DemoPerson.TESSA_QUARLE))).isInstanceOf(Outcome.Done.class);
    }

    private static void pass(Duration time) {
        shop.bean(DemoClock.class).skip(time);
    }

    private static Traveller traveller(TravellerId id) {
        return shop.bean(Travellers.class).find(id).orElseThrow().traveller();
    }

    private static String basket(TravellerId id) {
        return traveller(id).placement().orElseThrow().bin().value();
    }
}

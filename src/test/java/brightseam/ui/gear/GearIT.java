package brightseam.ui.gear;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.ShopServer;
import brightseam.chamber.ArgonSource;
import brightseam.chamber.Chamber;
import brightseam.chamber.shell.ArgonStore;
import brightseam.chamber.shell.Chambers;
import brightseam.demo.DemoPerson;
import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.shell.ShopClock;
import brightseam.kit.KitCommand;
import brightseam.kit.shell.Kits;
import brightseam.ledger.Outcome;
import brightseam.scan.OwnLabel;
import brightseam.ui.board.DeskBrowser;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The chamber's register and the argon in a real browser on the demo shop. */
class GearIT {

    private static final StationId CHAMBER = new StationId("S-CHAMBER-1");
    private static final SupplyId BUNDLE = new SupplyId("G-0601");
    private static final SupplyId DEWAR = new SupplyId("G-0604");

    private static ShopServer shop;
    private static DeskBrowser tessa;
    private static DeskBrowser ilka;

    @BeforeAll
    static void open() {
        shop = ShopServer.demo("--brightseam.demo-past=false", "--brightseam.scanner-burst-millis=300",
                "--brightseam.scanner-idle-millis=500");
        kit("K-0081", "Lander frame, main", 3);
        kit("K-0082", "Lander frame, spare", 26);
        kit("K-0083", "Lander frame, trial", 50);
        tessa = new DeskBrowser(shop, DemoPerson.TESSA_QUARLE);
        ilka = new DeskBrowser(shop, DemoPerson.ILKA_FERROW);
    }

    @AfterAll
    static void close() {
        tessa.close();
        ilka.close();
        shop.close();
    }

    @Test
    void a_chamber_s_gear_is_read_and_changed_with_a_reason_and_a_signature() {
        tessa.open("/shop/chamber").shows("Oxygen to weld").shows("stainless steel").look("chambers");
        tessa.open("/shop/chamber/S-CHAMBER-1").fill("Oxygen to weld, at most ppm", "60")
                .fill("Reason for the change", "Drawing LF-100").fill("Your PIN", DemoPerson.TESSA_QUARLE.pin())
                .press("Change and sign").hears("Check the form").look("chamber-terms");
        tessa.fill("Oxygen to weld, at most ppm", "20").fill("Your PIN", DemoPerson.TESSA_QUARLE.pin())
                .press("Change and sign").hears("Changed");
        assertThat(chamber().terms().limits().oxygenPpmToWeld().value()).isEqualByComparingTo("20");
        tessa.fill("Air that leaks in, L/min", "0.0005").fill("How it was found", "rise test over 30 min")
                .fill("PIN, leak test", DemoPerson.TESSA_QUARLE.pin()).press("Enter and sign")
                .hears("Entered");
        assertThat(chamber().leakLitresPerMinute()).isEqualByComparingTo("0.0005");
        tessa.open("/shop/chamber").shows("0.0005").shows("at most 20");
        tessa.open("/shop/chamber/S-NONE").shows("No such chamber");
    }

    @Test
    void argon_is_delivered_read_and_changed_over_by_scan() {
        ilka.open("/argon").shows("Connected lasts, holding").shows("Stands by").look("argon");
        tessa.open("/argon/delivery").choose("Comes in a", "cylinder").look("argon-delivery");
        tessa.fill("Label", "G-0611").fill("Title", "Argon cylinder, 50 L").fill("Lot", "AG-40001")
                .fill("Filled by", "Aether Gases (invented)").fill("Volume, L", "50")
                .fill("Filling pressure, bar", "200").fill("Oxygen, ppm", "1.5").fill("Moisture, ppm", "3")
                .fill("Certificate", "HC-1").fill("Pressure as delivered, bar", "195")
                .fill("Temperature as delivered, °C", "18").press("Enter the delivery").hears("Entered");
        ilka.shows("G-0611");
        scan(BUNDLE);
        ilka.hears("G-0601");
        scan(DEWAR);
        ilka.hears("G-0604").fill("Level of what goes on, %", "71")
                .fill("Your PIN", DemoPerson.ILKA_FERROW.pin()).look("argon-change-over");
        ilka.fill("Your PIN", DemoPerson.ILKA_FERROW.pin()).press("Change over and sign").hears("Changed over");
        assertThat(chamber().connected()).containsExactly(DEWAR);
        assertThat(source(BUNDLE).connectedTo()).isEmpty();
        scan(new SupplyId("G-0605"));
        ilka.hears("Stays off").look("argon-refused");
        scan(new SupplyId("G-0611"));
        ilka.hears("G-0611").fill("Pressure, bar", "180").fill("Temperature, °C", "18").press("Enter the reading")
                .hears("Entered").shows("180 bar at 18");
        scan(new SupplyId("G-0301"));
        ilka.hears("No argon here");
        tessa.open("/argon").press("Retire G-0605");
        tessa.fill("Reason", "Back to the steel shop").press("Retire G-0605, with this reason").hears("Retired");
        assertThat(source(new SupplyId("G-0605")).standing()).isEqualTo(ArgonSource.Standing.RETIRED);
    }

    private static void kit(String label, String title, long dueInHours) {
        Moment now = shop.bean(ShopClock.class).now();
        assertThat(shop.bean(Kits.class).execute(new KitCommand.OpenKit(new KitId(label), title,
                Optional.of(now.wall().plus(Duration.ofHours(dueInHours))),
                new Origin(now, DemoPerson.BRAM_ODUYA.badge(), "desk-1", true)))).isInstanceOf(Outcome.Done.class);
    }

    private static void scan(SupplyId supply) {
        ilka.page().locator("h1").click();
        ilka.page().keyboard().type(OwnLabel.of(supply).payload());
        ilka.page().keyboard().press("Enter");
    }

    private static Chamber chamber() {
        return shop.bean(Chambers.class).find(CHAMBER).orElseThrow().state();
    }

    private static ArgonSource source(SupplyId supply) {
        return shop.bean(ArgonStore.class).find(supply).orElseThrow().state();
    }
}

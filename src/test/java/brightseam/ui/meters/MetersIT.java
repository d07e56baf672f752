package brightseam.ui.meters;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.ShopServer;
import brightseam.demo.DemoPerson;
import brightseam.device.Quality;
import brightseam.device.Series;
import brightseam.device.shell.Readings;
import brightseam.kernel.ContactKind;
import brightseam.kernel.SupplyId;
import brightseam.kernel.shell.ShopClock;
import brightseam.kernel.Origin;
import brightseam.ledger.Outcome;
import brightseam.procedure.Surface;
import brightseam.procedure.Vocabulary.SupplyType;
import brightseam.supply.SupplyCommand;
import brightseam.supply.shell.Supplies;
import brightseam.ui.board.DeskBrowser;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Who keeps meters and who types their readings, in a real browser on the demo shop; a device beside them. */
class MetersIT {

    private static final SupplyId TYPED = new SupplyId("G-0901");
    private static final SupplyId SENT = new SupplyId("G-0902");
    private static final String PIN = DemoPerson.BRAM_ODUYA.pin();

    private static ShopServer shop;
    private static DeskBrowser bram;
    private static DeskBrowser ilka;

    @BeforeAll
    static void open() {
        shop = ShopServer.demo("--brightseam.demo-past=false");
        gauge(TYPED, "Oxygen meter, by hand");
        gauge(SENT, "Oxygen meter, network");
        bram = new DeskBrowser(shop, DemoPerson.BRAM_ODUYA);
        ilka = new DeskBrowser(shop, DemoPerson.ILKA_FERROW);
    }

    @AfterAll
    static void close() {
        bram.close();
        ilka.close();
        shop.close();
    }

    private static void gauge(SupplyId id, String title) {
        Origin origin = new Origin(shop.bean(ShopClock.class).now(), DemoPerson.BRAM_ODUYA.badge(), "desk-1", true);
        assertThat(shop.bean(Supplies.class).execute(new SupplyCommand.RegisterSupply(id,
                new SupplyType("oxygen-meter", "Oxygen meter", ContactKind.GAUGE, Set.of(Surface.UNCLEANED)), title,
                "SN-" + id, "Fennmark", Optional.of(LocalDate.of(2090, 1, 1)), Set.of(Surface.UNCLEANED), origin)))
                .isInstanceOf(Outcome.Done.class);
    }

    private static DeskBrowser install(SupplyId id, String title, String way) {
        return bram.open("/shop/meters").choose("Gauge", id + " " + title)
                .choose("Station", "S-CHAMBER-1 Argon chamber").choose("Gas from", "in the chamber")
                .choose("What it measures", "Oxygen, ppm").fill("Range from", "0").fill("Range to", "1000")
                .fill("Resolution", "0.1").fill("A reading every, s", "1").fill("Response, s", "8")
                .choose("Readings come in", way);
    }

    @Test
    void a_meter_is_installed_and_its_readings_are_typed_against_a_count_down() {
        install(TYPED, "Oxygen meter, by hand", "typed by hand").fill("A reading at least every, min", "0")
                .fill("Your PIN", PIN).press("Install it and sign").hears("Check the form");
        bram.fill("A reading at least every, min", "2").fill("Your PIN", PIN).press("Install it and sign")
                .hears("Installed").shows("Never heard").look("meters");
        ilka.open("/shop/meters/G-0901").shows("Never heard").shows("The next one is due").fill("It shows, ppm O2",
                "2000").press("That is what it shows").hears("Outside range");
        ilka.fill("It shows, ppm O2", "14,5").press("That is what it shows").hears("Stored").shows("In order")
                .shows("Last by P-0101").look("meter-typed");
        assertThat(series(TYPED).at(0).value()).isEqualTo(14.5);
        assertThat(series(TYPED).at(0).quality()).containsExactly(Quality.TYPED);
        assertThat(ilka.page().getByText("Take it out of use").count()).isZero();
    }

    @Test
    void a_device_is_given_its_token_once_and_what_it_sends_is_on_the_screen() throws Exception {
        install(SENT, "Oxygen meter, network", "sent by the device over HTTP").fill("Your PIN", PIN)
                .press("Install it and sign").hears("Installed");
        bram.open("/shop/meters/G-0902").page().getByLabel("Your PIN").first().fill(PIN);
        bram.press("Make a token and sign").hears("Token made").look("meter-token");
        String token = bram.page().locator(".meter-token").textContent();
        assertThat(send("wrong", 12.3)).isEqualTo(401);
        for (int i = 0; i < 40; i++) {
            assertThat(send(token, 12.3 + i / 10.0)).isEqualTo(200);
        }
        bram.shows("16.2\u00a0ppm O2").look("meter");
        assertThat(series(SENT).size()).isEqualTo(40);
        bram.open("/shop/meters/G-0902").shows("16.2\u00a0ppm O2");
        assertThat(bram.page().content()).doesNotContain(token);
        bram.fill("Why it is taken out of use", "cell spent");
        bram.page().getByLabel("Your PIN").last().fill(PIN);
        bram.press("Take it out and sign").hears("Taken out of use").shows("Use it again");
        assertThat(send(token, 1)).isEqualTo(409);
        bram.open("/shop/meters/G-9999").shows("No such meter");
    }

    private static Series series(SupplyId id) {
        return shop.bean(Readings.class).series(id, 0, Long.MAX_VALUE - 1);
    }

    private static int send(String token, double value) throws IOException, InterruptedException {
        return HttpClient.newHttpClient().send(HttpRequest.newBuilder(URI.create(shop.url("/feeds/readings")))
                .header("Authorization", "Bearer " + token).header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString("{\"value\": " + value + "}")).build(),
                HttpResponse.BodyHandlers.ofString()).statusCode();
    }
}

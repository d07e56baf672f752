package brightseam.ui.admin;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.ShopServer;
import brightseam.demo.DemoPerson;
import brightseam.ui.board.DeskBrowser;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The register of shop systems in a real browser: from registering to a withdrawn token. */
class SystemsIT {

    @Test
    void a_system_is_registered_gets_a_token_that_works_and_loses_it() throws IOException, InterruptedException {
        try (ShopServer shop = ShopServer.demo("--brightseam.demo-past=false");
                DeskBrowser oda = new DeskBrowser(shop, DemoPerson.ODA_MARSH)) {
            oda.open("/shop/systems").shows("No other system of the shop is registered").look("systems-empty");
            oda.fill("Name", "ORDERS-1").fill("What it is", "Order book of the office").picks("read")
                    .picks("release travellers").fill("Your PIN", DemoPerson.ODA_MARSH.pin())
                    .press("Register and sign").hears("Nobody answers");
            oda.fill("Badge of the lead who answers", "P-0201")
                    .fill("PIN of that lead", DemoPerson.BRAM_ODUYA.pin())
                    .fill("Your PIN", DemoPerson.ODA_MARSH.pin()).press("Register and sign").hears("Registered");
            oda.fill("Your PIN, new token", DemoPerson.ODA_MARSH.pin()).press("Make a token and sign")
                    .hears("Token made").look("systems");
            String token = oda.page().locator("code.meter-token").innerText().strip();
            assertThat(status(shop, token)).isEqualTo(200);
            assertThat(releaseOfTheHowTo(shop, token)).isEqualTo(201);
            assertThat(releaseOfTheHowTo(shop, token)).isEqualTo(200);
            oda.open("/shop/systems").shows("Bram Oduya, P-0201").choose("System", "ORDERS-1")
                    .fill("Why it is withdrawn", "The server was sold")
                    .fill("Your PIN, withdrawal", DemoPerson.ODA_MARSH.pin())
                    .press("Withdraw its token and sign").hears("Token withdrawn").shows("WITHDRAWN");
            assertThat(status(shop, token)).isEqualTo(401);
        }
    }

    private static int status(ShopServer shop, String token) throws IOException, InterruptedException {
        return HttpClient.newHttpClient().send(HttpRequest.newBuilder(URI.create(shop.url("/api/v1/kits")))
                .header("Authorization", "Bearer " + token).build(), HttpResponse.BodyHandlers.discarding())
                .statusCode();
    }

    /** Sends what docs/rest.md tells to send. */
    private static int releaseOfTheHowTo(ShopServer shop, String token) throws IOException, InterruptedException {
        String told = Files.readString(Path.of("docs/rest.md"));
        int begins = told.indexOf("-d '{") + 4;
        String body = told.substring(begins, told.indexOf("}'", begins) + 1);
        return HttpClient.newHttpClient().send(HttpRequest.newBuilder(
                        URI.create(shop.url("/api/v1/kits/K-4711/releases")))
                .header("Authorization", "Bearer " + token).header("Idempotency-Key", "order-4711")
                .header("Content-Type", "application/json").POST(HttpRequest.BodyPublishers.ofString(body)).build(),
                HttpResponse.BodyHandlers.discarding()).statusCode();
    }
}

package brightseam.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.tls.shell.Machine;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.Inet4Address;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.security.cert.CertificateFactory;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLHandshakeException;
import javax.net.ssl.TrustManagerFactory;
import org.apache.catalina.connector.Connector;
import org.apache.coyote.AbstractProtocol;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.boot.tomcat.TomcatWebServer;
import org.springframework.boot.web.server.servlet.context.ServletWebServerApplicationContext;

/** A shop that listens on HTTPS, from this machine and as another machine in its network sees it. */
class HttpsIT {

    private static ShopServer shop;
    private static int port;
    private static String elsewhere;

    @BeforeAll
    static void open_it() throws SocketException {
        shop = ShopServer.empty("--brightseam.https-port=0");
        port = httpsPort();
        elsewhere = anAddressOfTheNetwork();
    }

    @AfterAll
    static void close_it() {
        shop.close();
    }

    @Test
    void who_trusts_the_authority_alone_reaches_the_shop_by_every_address_of_the_machine() throws Exception {
        HttpClient trusting = trusting(fetched().body());
        for (String host : Machine.names().addresses()) {
            HttpResponse<String> page = get(trusting, "https://" + host + ":" + port + "/sign-in");
            assertThat(page.statusCode()).as(host).isEqualTo(200);
            assertThat(page.headers().allValues("Set-Cookie")).as(host)
                    .isNotEmpty().allSatisfy(cookie -> assertThat(cookie).contains("Secure", "HttpOnly"));
        }
        assertThat(get(trusting, "https://localhost:" + port + "/sign-in").statusCode()).isEqualTo(200);
        assertThatThrownBy(() -> get(HttpClient.newHttpClient(), "https://localhost:" + port + "/sign-in"))
                .isInstanceOf(SSLHandshakeException.class);
    }

    @Test
    void plain_http_from_another_machine_leads_to_the_enrolling_page_alone() throws Exception {
        HttpClient client = HttpClient.newHttpClient();
        String plain = "http://" + elsewhere + ":" + shop.port();
        for (String path : new String[] {"/", "/sign-in", "/frontend/bench.css", "/alive", "/actuator/health"}) {
            HttpResponse<String> answer = get(client, plain + path);
            assertThat(answer.statusCode()).as(path).isEqualTo(302);
            assertThat(answer.headers().firstValue("Location")).as(path).contains("/enrol");
            assertThat(answer.headers().firstValue("Set-Cookie")).as(path).isEmpty();
        }
        HttpRequest feed = HttpRequest.newBuilder(URI.create(plain + "/feeds/readings"))
                .POST(HttpRequest.BodyPublishers.ofString("{}")).build();
        assertThat(client.send(feed, HttpResponse.BodyHandlers.ofString()).statusCode()).isEqualTo(403);
        assertThat(get(client, plain + "/api/travellers").statusCode()).isEqualTo(403);
        assertThat(get(client, plain + "/enrol").body()).contains("https://localhost:" + port + "/");
        assertThat(get(client, shop.url("/sign-in")).statusCode()).as("this machine").isEqualTo(200);
    }

    @Test
    void a_tablet_is_shown_the_steps_and_then_signs_in_over_https() throws IOException {
        Browser chromium = Chromium.browser();
        for (int[] size : new int[][] {{1280, 800}, {800, 1280}}) {
            try (BrowserContext tablet = chromium.newContext(new Browser.NewContextOptions()
                    .setViewportSize(size[0], size[1]).setIgnoreHTTPSErrors(true))) {
                Page page = tablet.newPage();
                page.navigate("http://" + elsewhere + ":" + shop.port() + "/bench");
                assertThat(page.url()).endsWith("/enrol");
                assertThat(page.locator("main").innerText()).contains("Compare it before you trust it");
                assertThat((Boolean) page.evaluate(
                        "document.documentElement.scrollWidth <= document.documentElement.clientWidth")).isTrue();
                Path pictures = Files.createDirectories(Path.of("target/screenshots"));
                page.screenshot(new Page.ScreenshotOptions().setFullPage(true)
                        .setPath(pictures.resolve("enrol-" + size[0] + ".png")));
                page.locator("a.go[href^='https://localhost']").click();
                page.locator("text=Make the first administrator").waitFor();
                assertThat(page.url()).startsWith("https://localhost:" + port + "/");
            }
        }
    }

    private static HttpResponse<String> fetched() throws Exception {
        HttpResponse<String> pem = get(HttpClient.newHttpClient(),
                "http://" + elsewhere + ":" + shop.port() + "/enrol/authority.crt");
        assertThat(pem.headers().firstValue("Content-Type").orElseThrow()).startsWith("application/x-x509-ca-cert");
        return pem;
    }

    private static HttpClient trusting(String pem) throws Exception {
        KeyStore trusted = KeyStore.getInstance("PKCS12");
        trusted.load(null, null);
        trusted.setCertificateEntry("shop", CertificateFactory.getInstance("X.509")
                .generateCertificate(new ByteArrayInputStream(pem.getBytes())));
        TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        trust.init(trusted);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, trust.getTrustManagers(), null);
        return HttpClient.newBuilder().sslContext(context).build();
    }

    private static HttpResponse<String> get(HttpClient client, String url) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(URI.create(url)).build(), HttpResponse.BodyHandlers.ofString());
    }

    /** What comes from it does not come from the loopback, as from another machine. */
    private static String anAddressOfTheNetwork() throws SocketException {
        return NetworkInterface.networkInterfaces().flatMap(NetworkInterface::inetAddresses)
                .filter(address -> address instanceof Inet4Address && !address.isLoopbackAddress())
                .findFirst().orElseThrow().getHostAddress();
    }

    private static int httpsPort() {
        TomcatWebServer server = (TomcatWebServer) ((ServletWebServerApplicationContext) shop.context()).getWebServer();
        for (Connector connector : server.getTomcat().getService().findConnectors()) {
            if (connector.getSecure()) {
                return ((AbstractProtocol<?>) connector.getProtocolHandler()).getLocalPort();
            }
        }
        throw new AssertionError("no HTTPS connector");
    }
}

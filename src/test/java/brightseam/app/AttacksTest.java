package brightseam.app;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.app.RawHttp.Answer;
import brightseam.browser.ShopServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The real server, asked by somebody who means harm and has no badge. */
class AttacksTest {

    private static final String HOST = "Host: localhost";

    private static ShopServer shop;

    @BeforeAll
    static void open_it() {
        shop = ShopServer.empty("--brightseam.greeting=false");
    }

    @AfterAll
    static void close_it() {
        shop.close();
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "/frontend/../../../../etc/passwd", "/frontend/..%2f..%2f..%2fetc%2fpasswd",
        "/frontend/%2e%2e/%2e%2e/application.properties",
        "/frontend/..;/..;/application.properties", "/frontend/..%5c..%5capplication.properties",
        "/frontend//../application.properties", "/VAADIN/../application.properties", "/application.properties",
        "/VAADIN/static/..%252f..%252fapplication.properties", "/frontend/%00", "/META-INF/MANIFEST.MF",
        "/WEB-INF/web.xml", "/picture/..%2f..%2fbrightseam.mv.db", "/stamp/..%2f..%2fx/record.pdf", "/.git/config",
        "/stamp/%0d%0aX-Evil:%20yes/record.csv", "/enrol/..%2fauthority.key", "/enrol/authority.key"})
    void no_path_leads_out_of_what_is_served(String path) {
        Answer answer = RawHttp.send(shop.port(), "GET " + path + " HTTP/1.1", HOST);
        assertThat(answer.status()).as(path).isIn(302, 400, 401, 403, 404);
        assertThat(answer.body()).doesNotContain("root:", "brightseam.data", "PRIVATE KEY", "Manifest-Version");
        assertThat(answer.headers()).noneMatch(line -> line.startsWith("X-Evil"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "//evil.example/", "//evil.example/%2e%2e", "/\\\\evil.example", "/%5cevil.example",
        "/sign-in?continue=//evil.example", "/board?url=https://evil.example", "/;//evil.example"})
    void nobody_is_sent_to_another_host_whatever_the_path_and_the_host_header_say(String path) {
        Answer answer = RawHttp.send(shop.port(), "GET " + path + " HTTP/1.1", "Host: evil.example");
        assertThat(answer.header("Location")).as(path).doesNotContain("evil.example");
        assertThat(answer.header("Set-Cookie")).doesNotContain("evil.example");
    }

    @ParameterizedTest
    @ValueSource(strings = {"GET /%zz HTTP/1.1", "GET /a%2fb HTTP/1.1", "GET /a\\b HTTP/1.1", "GET /a;b HTTP/1.1",
        "GET /no-such HTTP/1.1", "GET /sign-in HTTP/1.1", "GET /frontend/none.css HTTP/1.1", "GET /enrol HTTP/1.1",
        "GET /alive HTTP/1.1", "TRACE / HTTP/1.1", "PUT /sign-in HTTP/1.1", "DELETE /enrol HTTP/1.1",
        "POST /scan/frame HTTP/1.1", "GET /actuator/env HTTP/1.1"})
    void every_answer_with_a_body_says_what_browsers_need_to_know(String asked) {
        Answer answer = RawHttp.send(shop.port(), asked, HOST);
        assertThat(answer.header("Server")).isEmpty();
        assertThat(answer.body()).doesNotContain("Tomcat", "Exception", "at org.");
        if (!answer.body().isEmpty()) {
            assertThat(answer.header("X-Content-Type-Options")).as(asked + answer).isEqualTo("nosniff");
            assertThat(answer.header("X-Frame-Options")).as(asked).isEqualTo("DENY");
            assertThat(answer.header("Content-Security-Policy")).as(asked).contains("frame-ancestors 'none'");
        }
    }

    @Test
    void requests_that_two_servers_would_read_differently_are_refused() {
        assertThat(RawHttp.send(shop.port(), "POST /alive HTTP/1.1", HOST, "Content-Length: 5", "Content-Length: 6")
                .status()).isEqualTo(400);
        assertThat(RawHttp.send(shop.port(), "GET /alive HTTP/1.1", HOST, "Host: other").status()).isEqualTo(400);
        assertThat(RawHttp.send(shop.port(), "GET /alive HTTP/1.1").status()).isEqualTo(400);
        assertThat(RawHttp.send(shop.port(), "GET /alive HTTP/1.1", HOST, "X-A: b\u0000c").status()).isEqualTo(400);
        assertThat(RawHttp.send(shop.port(), "GET /alive HTTP/1.1", HOST, "X-Long: " + "a".repeat(20_000)).status())
                .isIn(400, 431);
    }

    @Test
    void whoever_says_that_a_proxy_sent_them_is_not_believed() {
        Answer answer = RawHttp.send(shop.port(), "GET /sign-in HTTP/1.1", HOST, "X-Forwarded-Proto: https",
                "X-Forwarded-For: 10.0.0.1", "X-Forwarded-Host: evil.example", "Forwarded: host=evil.example");
        assertThat(answer.header("Set-Cookie")).isNotEmpty().doesNotContain("Secure");
    }

    @Test
    void a_session_that_the_browser_made_up_is_not_taken() {
        String chosen = "0123456789ABCDEF0123456789ABCDEF";
        Answer answer = RawHttp.send(shop.port(), "GET /sign-in;jsessionid=" + chosen + " HTTP/1.1", HOST,
                "Cookie: brightseam-session=" + chosen);
        assertThat(answer.header("Set-Cookie")).doesNotContain(chosen);
    }

    @Test
    void no_path_changes_anything_without_the_token_of_a_page() {
        for (String path : new String[] {"/", "/first-run", "/sign-in", "/leave", "/pin", "/enrol", "/scan/frame",
            "/shop/people", "/board", "/release", "/actuator/shutdown", "/logout"}) {
            for (String method : new String[] {"POST", "PUT", "DELETE", "PATCH"}) {
                Answer answer = RawHttp.send(shop.port(), method + " " + path + " HTTP/1.1", HOST,
                        "Content-Length: 0", "Content-Type: application/x-www-form-urlencoded");
                assertThat(answer.status()).as(method + " " + path).isIn(401, 403, 405);
            }
        }
    }
}

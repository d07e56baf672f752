package brightseam.app;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Decision.Accepted;
import brightseam.people.shell.FirstRun;
import brightseam.people.shell.Tablets;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.web.server.servlet.context.ServletWebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

class SecurityTest {

    private static final String BADGE = "P-0001";
    private static final String PIN = "2580";

    private static ConfigurableApplicationContext shop;
    private static int port;

    private final Browser browser = new Browser(port);

    @BeforeAll
    static void open_a_small_shop() {
        shop = new SpringApplicationBuilder(SmallShop.class).run(
                "--server.port=0",
                "--brightseam.pin-strength=4",
                "--spring.flyway.enabled=false",
                "--spring.sql.init.mode=always",
                "--spring.sql.init.schema-locations=classpath:db/migration/common/V10__people.sql,"
                        + "classpath:db/migration/common/V88__pin_life.sql",
                "--spring.datasource.url=jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1");
        port = ((ServletWebServerApplicationContext) shop).getWebServer().getPort();
        assertThat(shop.getBean(FirstRun.class)
                .open("here", shop.getBean(FirstRun.class).code(), new BadgeId(BADGE), "Ada Moreau", PIN))
                .isInstanceOf(Accepted.class);
    }

    @AfterAll
    static void close_it() {
        shop.close();
    }

    @Test
    void anybody_is_sent_to_the_sign_in_page_from_every_path_but_the_open_ones() {
        for (String path : List.of("/", "/bench-page", "/board", "/actuator/health/db", "/no-such-page")) {
            HttpResponse<String> answer = browser.get(path);
            assertThat(answer.statusCode()).as(path).isEqualTo(302);
            assertThat(answer.headers().firstValue("Location")).as(path).get().asString().endsWith("/sign-in");
        }
        assertThat(browser.get("/sign-in").body()).isEqualTo("nobody");
        assertThat(browser.get("/actuator/health").statusCode()).isEqualTo(200);
        assertThat(browser.get("/frontend/no-such-file.css").headers().firstValue("Location")).isEmpty();
    }

    @Test
    void nothing_else_of_the_actuator_is_open_to_a_person_who_is_signed_in() {
        browser.signIn(BADGE, PIN);
        assertThat(browser.get("/actuator/env").statusCode()).isEqualTo(403);
        assertThat(browser.get("/actuator/heapdump").statusCode()).isEqualTo(403);
        assertThat(browser.get("/actuator/health").body()).contains("\"status\":\"UP\"").doesNotContain("components");
    }

    @Test
    void every_answer_carries_the_headers() {
        var headers = browser.get("/sign-in").headers();
        assertThat(headers.firstValue("Content-Security-Policy")).get().asString()
                .contains("default-src 'self'", "frame-ancestors 'none'", "object-src 'none'");
        assertThat(headers.firstValue("X-Frame-Options")).contains("DENY");
        assertThat(headers.firstValue("X-Content-Type-Options")).contains("nosniff");
        assertThat(headers.firstValue("Referrer-Policy")).contains("same-origin");
        assertThat(headers.firstValue("Permissions-Policy")).get().asString().contains("camera=(self)");
    }

    @Test
    void signing_in_gives_a_new_session_id_and_a_guarded_tablet_cookie() {
        browser.get("/sign-in");
        String before = browser.cookie("brightseam-session");
        HttpResponse<String> answer = browser.signIn(BADGE, PIN);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(browser.cookie("brightseam-session")).isNotEmpty().isNotEqualTo(before);
        assertThat(answer.headers().allValues("Set-Cookie"))
                .anySatisfy(cookie -> assertThat(cookie).startsWith("brightseam-tablet=")
                        .contains("HttpOnly", "SameSite=Strict", "Path=/").doesNotContain("Secure"))
                .anySatisfy(cookie -> assertThat(cookie).startsWith("brightseam-session=")
                        .contains("HttpOnly", "SameSite=Lax"));
        assertThat(browser.get("/bench-page").body()).matches("P-0001@TAB-[A-Z2-9]{4}");
    }

    @Test
    void a_wrong_pin_opens_nothing_and_makes_no_tablet_known() {
        assertThat(browser.signIn("P-0404", PIN).statusCode()).isEqualTo(403);
        assertThat(browser.get("/bench-page").statusCode()).isEqualTo(302);
        assertThat(browser.cookie("brightseam-tablet")).isEmpty();
    }

    @Test
    void a_forged_post_is_refused() {
        browser.signIn(BADGE, PIN);
        assertThat(browser.postWithoutToken("/scan/frame", "a=b").statusCode()).isEqualTo(403);
        assertThat(browser.postWithoutToken("/sign-in", "badge=" + BADGE + "&pin=" + PIN).statusCode()).isEqualTo(403);
        assertThat(browser.post("/scan/frame", "a=b").statusCode()).isEqualTo(200);
    }

    /** Whether the token is right is asked behind this door: see FeedControllerTest. */
    @Test
    void a_device_without_session_may_post_readings_and_nothing_else() {
        assertThat(browser.postWithoutToken("/feeds/readings", "a=b").statusCode()).isEqualTo(200);
        assertThat(browser.cookie("brightseam-session")).isEmpty();
        assertThat(browser.get("/feeds/readings").statusCode()).isEqualTo(302);
        assertThat(browser.postWithoutToken("/feeds/other", "a=b").statusCode()).isEqualTo(403);
    }

    @Test
    void frames_come_from_a_person_or_a_known_tablet_only() {
        assertThat(browser.post("/scan/frame", "a=b").statusCode()).isEqualTo(401);
        browser.signIn(BADGE, PIN);
        browser.post("/bench-page", "sign=out");
        assertThat(browser.get("/bench-page").statusCode()).isEqualTo(302);
        assertThat(browser.post("/scan/frame", "a=b").statusCode()).isEqualTo(200);
    }

    @Test
    void a_lost_session_comes_back_by_the_tablets_cookie_and_only_by_it() {
        browser.signIn(BADGE, PIN);
        String who = browser.get("/bench-page").body();
        browser.loseSession();
        assertThat(browser.get("/bench-page").body()).isEqualTo(who);
        browser.loseSession();
        browser.loseTabletCookie();
        assertThat(browser.get("/bench-page").statusCode()).isEqualTo(302);
    }

    @Test
    void an_idle_tablet_signs_its_person_out_in_the_running_session_too() {
        browser.signIn(BADGE, PIN);
        shop.getBean(JdbcClient.class).sql("update tablet set active_millis = active_millis - 15 * 60000").update();
        assertThat(browser.get("/bench-page").statusCode()).isEqualTo(302);
        browser.signIn(BADGE, PIN);
        assertThat(browser.get("/bench-page").statusCode()).isEqualTo(200);
    }

    @Test
    void an_idle_tablet_signs_its_person_out_on_the_paths_of_pages_parts_too() {
        browser.signIn(BADGE, PIN);
        String label = browser.get("/bench-page").body().substring((BADGE + "@").length());
        shop.getBean(JdbcClient.class).sql("update tablet set active_millis = active_millis - 15 * 60000").update();
        browser.get("/alive");
        assertThat(shop.getBean(Tablets.class).find(label).orElseThrow().badge()).isPresent();
        browser.get("/alive?v-r=uidl");
        assertThat(shop.getBean(Tablets.class).find(label).orElseThrow().badge()).isEmpty();
    }

    @Test
    void a_copied_tablet_cookie_is_worth_nothing_once_the_next_person_signed_in() {
        browser.signIn(BADGE, PIN);
        String who = browser.get("/bench-page").body();
        String copied = browser.cookie("brightseam-tablet");
        Browser thief = new Browser(port);
        thief.takeTabletCookie(copied);
        assertThat(thief.get("/bench-page").body()).isEqualTo(who);
        browser.signIn(BADGE, PIN);
        assertThat(browser.get("/bench-page").body()).as("the tablet keeps its label").isEqualTo(who);
        Browser later = new Browser(port);
        later.takeTabletCookie(copied);
        assertThat(later.get("/bench-page").statusCode()).isEqualTo(302);
    }

    @Test
    void a_heart_beat_keeps_nobody_signed_in() {
        browser.signIn(BADGE, PIN);
        JdbcClient jdbc = shop.getBean(JdbcClient.class);
        jdbc.sql("update tablet set active_millis = active_millis - 14 * 60000").update();
        browser.get("/bench-page?v-r=heartbeat");
        jdbc.sql("update tablet set active_millis = active_millis - 60000").update();
        assertThat(browser.get("/bench-page").statusCode()).isEqualTo(302);
    }

    @Test
    void signing_out_ends_the_session_and_the_tablet_remembers_nobody() {
        browser.signIn(BADGE, PIN);
        String label = browser.get("/bench-page").body().substring((BADGE + "@").length());
        browser.post("/bench-page", "sign=out");
        browser.loseSession();
        assertThat(browser.get("/bench-page").statusCode()).isEqualTo(302);
        assertThat(shop.getBean(Tablets.class).find(label).orElseThrow().badge()).isEmpty();
    }
}

package brightseam.ui.parts;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.Chromium;
import brightseam.kernel.Moment;
import brightseam.kernel.shell.ShopClock;
import com.deque.html.axecore.args.AxeRuleOptions;
import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Keyboard;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.BoundingBox;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.SpringBootConfiguration;
import org.springframework.boot.autoconfigure.EnableAutoConfiguration;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.FilterType;

/** The parts in a real browser: what a scanner, a finger and a cut network do to them. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT, classes = PartsIT.App.class)
class PartsIT {

    private static final double MAIN_PX = 128;
    private static final double OTHER_PX = 76;
    private static final double GAP_PX = 15.5;
    private static final double DIGITS_PX = 120;
    private static final int[][] TABLETS = {{1280, 800}, {800, 1280}};

    @LocalServerPort
    private int port;

    @Autowired
    private TestClock clock;

    private BrowserContext context;
    private Page page;

    /** The parts and the heartbeat alone: no database, no sign-in. */
    @SpringBootConfiguration
    @EnableAutoConfiguration(excludeName = {
        "org.springframework.boot.jdbc.autoconfigure.DataSourceAutoConfiguration",
        "org.springframework.boot.flyway.autoconfigure.FlywayAutoConfiguration",
        "org.springframework.boot.security.autoconfigure.SecurityAutoConfiguration",
        "org.springframework.boot.security.autoconfigure.UserDetailsServiceAutoConfiguration",
        "org.springframework.boot.security.autoconfigure.actuate.web.servlet.ManagementWebSecurityAutoConfiguration",
        "org.springframework.boot.security.autoconfigure.web.servlet.SecurityFilterAutoConfiguration",
        "org.springframework.boot.security.autoconfigure.web.servlet.ServletWebSecurityAutoConfiguration",
        "com.vaadin.flow.spring.SpringSecurityAutoConfiguration"})
    @ComponentScan(basePackages = "brightseam.app", useDefaultFilters = false,
            includeFilters = @ComponentScan.Filter(type = FilterType.REGEX, pattern = ".*AliveController"))
    static class App {

        @Bean
        TestClock clock() {
            return new TestClock();
        }
    }

    /** Runs in real time and can be moved on. */
    static final class TestClock implements ShopClock {
        private final long startNanos = System.nanoTime();
        private final AtomicLong skippedMillis = new AtomicLong();

        void skip(Duration duration) {
            skippedMillis.addAndGet(duration.toMillis());
        }

        @Override
        public Moment now() {
            long run = (System.nanoTime() - startNanos) / 1_000_000 + skippedMillis.get();
            return new Moment(Instant.parse("2031-10-14T08:20:00Z").plusMillis(run), 10_000_000 + run);
        }

        @Override
        public double speed() {
            return 1;
        }

        @Override
        public boolean isDemo() {
            return true;
        }
    }

    @BeforeEach
    void open_a_tablet() {
        context = Chromium.browser().newContext();
        page = context.newPage();
        page.setViewportSize(1280, 800);
    }

    @AfterEach
    void close_the_tablet() {
        context.close();
    }

    private void show(String name) {
        page.navigate("http://localhost:" + port + "/gallery/" + name);
        page.locator(".work-card").waitFor();
        page.waitForFunction("document.querySelectorAll(':not(:defined)').length === 0");
    }

    private void wedge(String text, String... then) {
        page.keyboard().type(text, new Keyboard.TypeOptions().setDelay(1));
        for (String key : then) {
            page.keyboard().press(key);
        }
    }

    private void scanned(String expected) {
        assertThat(page.locator("#scans > div").last()).hasText(expected);
    }

    @Test
    void a_scan_comes_in_with_enter_with_tab_and_with_nothing_behind_it() {
        show("fields");
        wedge("B-0142X", "Enter");
        scanned("WEDGE:B-0142X");
        wedge("T-1042K", "Tab");
        scanned("WEDGE:T-1042K");
        wedge("H-9T3381");
        scanned("WEDGE:H-9T3381");
        assertThat(page.locator("#scans > div")).hasCount(3);
    }

    @Test
    void separators_come_in_as_control_keys_and_as_f8() {
        show("fields");
        wedge("[)>", "Control+^");
        wedge("06", "Control+]");
        wedge("25SB-0142", "Control+]");
        wedge("Q6", "Control+^", "Control+d", "Enter");
        scanned("WEDGE:[)><RS>06<GS>25SB-0142<GS>Q6<RS><EOT>");
        wedge("]d21T77", "F8");
        wedge("Q6", "Enter");
        scanned("WEDGE:]d21T77<GS>Q6");
    }

    @Test
    void a_scan_leaves_the_field_and_the_button_that_have_the_focus_alone() {
        show("fields");
        page.locator("#plain").focus();
        wedge("B-0142X", "Enter");
        scanned("WEDGE:B-0142X");
        assertThat(page.locator("#plain")).hasValue("");
        assertThat(page.locator("#plain")).isFocused();
        page.locator(".action.main").focus();
        wedge("BIN 7 AND 8", "Enter");
        scanned("WEDGE:BIN 7 AND 8");
        assertThat(page.locator("#pressed")).hasText("");
    }

    @Test
    void a_person_types_into_a_field_as_if_nothing_listened() {
        show("fields");
        page.locator("#remark input").focus();
        page.keyboard().type("Seam 3: \"ok\" ", new Keyboard.TypeOptions().setDelay(200));
        page.keyboard().type("ab");
        page.keyboard().press("Backspace");
        page.keyboard().press("ArrowLeft");
        page.keyboard().type("ü");
        assertThat(page.locator("#remark input")).hasValue("Seam 3: \"ok\" üa");
        page.keyboard().type("x");
        page.locator("#plain").click();
        assertThat(page.locator("#remark input")).hasValue("Seam 3: \"ok\" üxa");
        page.locator(".action.main").focus();
        page.keyboard().press("Enter");
        page.keyboard().press("Space");
        assertThat(page.locator("#pressed")).hasText("pressed pressed");
        assertThat(page.locator("#scans > div")).hasCount(0);
    }

    @Test
    void pasted_text_is_a_typed_scan_only_where_no_field_has_the_focus() {
        show("fields");
        paste("B-0142X\n");
        scanned("TYPED:B-0142X");
        page.locator("#plain").focus();
        paste("left alone");
        assertThat(page.locator("#scans > div")).hasCount(1);
    }

    private void paste(String text) {
        page.evaluate("""
                text => {
                  const data = new DataTransfer();
                  data.setData('text', text);
                  document.activeElement.dispatchEvent(
                    new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }));
                }""", text);
    }

    @Test
    void typing_on_the_sheet_is_recorded_as_typed() {
        show("fields");
        page.getByText("Type it").click();
        Stream.of("B", "-", "7", "7").forEach(key -> page.locator(".type-keys button")
                .filter(new Locator.FilterOptions().setHasText(java.util.regex.Pattern.compile("^" + key + "$"))).click());
        targets(".shop-sheet");
        photograph("type-sheet");
        page.getByText("Use this").click();
        scanned("TYPED:B-77");
        assertThat(page.locator("dialog")).hasCount(0);
    }

    @Test
    void a_tablet_without_camera_says_so_and_what_to_do() {
        show("fields");
        page.getByText("Camera").click();
        assertThat(page.locator(".camera-says")).containsText("Use the hand scanner, or type the label.");
        photograph("camera-none");
        page.getByText("Close").click();
        assertThat(page.locator("dialog")).hasCount(0);
    }

    @Test
    void readings_and_pins_are_entered_on_keys_of_our_own() {
        show("reading");
        press("5", "2", ".", "5", "7", "+/−", "Enter");
        assertThat(page.locator("#entered")).hasText("Entered -52.5");
        press("Clear", "Enter");
        assertThat(page.locator(".pad-fault")).hasText("First press the digits.");
        show("pin");
        press("1", "2", "3", "4");
        assertThat(page.locator(".pad-dots i.filled")).hasCount(4);
        press("Enter");
        assertThat(page.locator("#entered")).hasText("Entered 1234");
        assertThat(page.locator(".pad-dots i.filled")).hasCount(0);
        show("look");
        press("Not in order", "Enter");
        assertThat(page.locator("#entered")).hasText("Entered 0");
    }

    private void press(String... keys) {
        for (String key : keys) {
            page.locator("shop-key-pad button").filter(new Locator.FilterOptions()
                    .setHasText(java.util.regex.Pattern.compile("^" + java.util.regex.Pattern.quote(key) + "$"))).click();
        }
    }

    @Test
    void accepted_goes_by_itself_and_refused_stays_until_it_is_dealt_with() {
        show("accepted");
        assertThat(page.locator(".verdict-word")).hasText("Signed");
        assertThat(page.locator(".verdict")).hasCount(0, new LocatorAssertions.HasCountOptions().setTimeout(7000));
        show("refused");
        assertThat(page.locator("shop-verdict[role=alert] .verdict-way-out")).hasText("Scan a clean bin.");
        page.waitForTimeout(5500);
        page.getByText("Seen").click();
        assertThat(page.locator(".verdict")).hasCount(0);
    }

    @Test
    void a_hold_runs_on_without_the_network_and_every_page_says_so_within_seconds() {
        show("holding");
        assertThat(page.locator("shop-link-word")).hasText("Linked");
        context.setOffline(true);
        assertThat(page.locator("shop-link")).containsText("Timers on this page run on.",
                new LocatorAssertions.ContainsTextOptions().setTimeout(6000));
        assertThat(page.locator(".hold-notes")).containsText("this clock runs on in the page");
        photograph("no-server");
        int before = digits();
        page.waitForTimeout(2500);
        assertThat(before - digits()).isBetween(2, 4);
        context.setOffline(false);
        assertThat(page.locator("shop-link")).containsText("The server is back.",
                new LocatorAssertions.ContainsTextOptions().setTimeout(6000));
        assertThat(page.locator("shop-link-word")).hasText("Linked");
    }

    @Test
    void a_server_that_answers_no_more_is_noticed_within_six_seconds() {
        show("fields");
        context.route("**/alive", route -> { });
        assertThat(page.locator("shop-link")).containsText("Nothing you sign now counts.",
                new LocatorAssertions.ContainsTextOptions().setTimeout(6000));
        wedge("B-0142X", "Enter");
        assertThat(page.locator(".scan-says")).containsText("Not taken: no server.");
        assertThat(page.locator("#scans > div")).hasCount(0);
    }

    @Test
    void a_server_that_was_started_anew_makes_the_page_load_itself_again() {
        show("fields");
        page.evaluate("window.stillTheSamePage = true");
        context.route("**/alive", route -> route.fulfill(
                new com.microsoft.playwright.Route.FulfillOptions().setStatus(204).setHeaders(Map.of("Shop-Boot", "new"))));
        page.waitForFunction("window.stillTheSamePage === undefined", null,
                new Page.WaitForFunctionOptions().setTimeout(6000));
    }

    @Test
    void the_heartbeat_puts_a_clock_right_that_went_wrong() {
        show("holding");
        int before = digits();
        clock.skip(Duration.ofSeconds(40));
        page.waitForFunction("before => { const [m, s] = document.querySelector('.hold-digits').textContent.split(':');"
                + " return before - (m * 60 + +s) >= 40 }", before, new Page.WaitForFunctionOptions().setTimeout(5000));
    }

    @Test
    void a_hold_sounds_before_its_limit_and_tells_when_it_passes_it() {
        page.addInitScript("window.tones = []; addEventListener('shop-tone', e => tones.push(e.detail.name))");
        show("soon");
        page.waitForFunction("tones.includes('before-minimum')");
        clock.skip(Duration.ofSeconds(30));
        assertThat(page.locator("#phases")).hasText("open", new LocatorAssertions.HasTextOptions().setTimeout(5000));
        clock.skip(Duration.ofSeconds(200));
        assertThat(page.locator("#phases")).hasText("open over", new LocatorAssertions.HasTextOptions().setTimeout(5000));
        page.waitForFunction("tones.includes('overrun')");
    }

    private int digits() {
        String[] parts = page.locator(".hold-digits").innerText().split(":");
        return Integer.parseInt(parts[0]) * 60 + Integer.parseInt(parts[1]);
    }

    @ParameterizedTest
    @ValueSource(strings = {"bench", "accepted", "refused", "holding", "soon", "open", "over", "long", "kept",
        "reading", "pin", "look", "fields", "charts"})
    void every_part_is_large_enough_legible_and_reaches_no_further_than_the_screen(String name) {
        for (int[] tablet : TABLETS) {
            page.setViewportSize(tablet[0], tablet[1]);
            show(name);
            page.waitForTimeout(200);
            photograph(name);
            targets("body");
            fits();
            violations();
        }
        page.addStyleTag(new Page.AddStyleTagOptions().setContent("html { font-size: 200% }"));
        fits();
        photograph(name + "-text-200");
    }

    private void photograph(String name) {
        int width = page.viewportSize().width;
        int height = page.viewportSize().height;
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(Path.of("target/screenshots/parts-%s-%dx%d.png".formatted(name, width, height))));
    }

    private void fits() {
        assertThat((int) page.evaluate("document.documentElement.scrollWidth")).as("width of the page")
                .isLessThanOrEqualTo(page.viewportSize().width);
        for (Locator digits : page.locator(".hold-digits").all()) {
            assertThat((double) digits.evaluate("e => parseFloat(getComputedStyle(e).fontSize)"))
                    .isGreaterThanOrEqualTo(DIGITS_PX);
            assertThat((boolean) digits.evaluate("e => e.scrollWidth <= e.clientWidth")).as("digits fit").isTrue();
        }
    }

    private void targets(String within) {
        List<BoundingBox> boxes = page.locator(within + " .action:visible").all().stream()
                .peek(PartsIT::isLargeEnough).map(Locator::boundingBox).toList();
        for (int one = 0; one < boxes.size(); one++) {
            for (int other = one + 1; other < boxes.size(); other++) {
                assertThat(distance(boxes.get(one), boxes.get(other))).as("gap between targets")
                        .isGreaterThanOrEqualTo(GAP_PX);
            }
        }
    }

    private static void isLargeEnough(Locator target) {
        boolean main = target.getAttribute("class").contains("main");
        BoundingBox box = target.boundingBox();
        assertThat(Math.min(box.width, box.height)).as("size of " + target.innerText())
                .isGreaterThanOrEqualTo(main ? MAIN_PX : OTHER_PX);
    }

    private static double distance(BoundingBox one, BoundingBox other) {
        double across = Math.max(one.x, other.x) - Math.min(one.x + one.width, other.x + other.width);
        double down = Math.max(one.y, other.y) - Math.min(one.y + one.height, other.y + other.height);
        return Math.max(across, down);
    }

    private void violations() {
        AxeRuleOptions on = new AxeRuleOptions();
        on.setEnabled(true);
        AxeRunOptions options = new AxeRunOptions();
        options.setRules(Map.of("color-contrast-enhanced", on));
        List<String> found = new AxeBuilder(page).options(options).analyze().getViolations().stream()
                .map(rule -> rule.getId() + ": " + rule.getNodes().stream()
                        .map(node -> node.getTarget() + " " + node.getFailureSummary()).toList())
                .toList();
        assertThat(found).isEmpty();
    }
}

package brightseam.ui.parts;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.Chromium;
import brightseam.kernel.Moment;
import brightseam.kernel.shell.ShopClock;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Keyboard;
import com.microsoft.playwright.Page;
import com.vaadin.flow.spring.annotation.EnableVaadin;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.autoconfigure.EnableAutoConfiguration;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.FilterType;

/** A tablet in a real browser that shows a page of the {@link Gallery}. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT, classes = TabletAtParts.App.class)
public abstract class TabletAtParts {

    private static final double MAIN_PX = 128;
    private static final double OTHER_PX = 76;
    private static final double GAP_PX = 15.5;

    /** The parts and the heartbeat alone, no database, no sign-in. No stereotype, so that nothing else scans it. */
    @EnableAutoConfiguration(excludeName = {
        "org.springframework.boot.jdbc.autoconfigure.DataSourceAutoConfiguration",
        "org.springframework.boot.flyway.autoconfigure.FlywayAutoConfiguration",
        "org.springframework.boot.security.autoconfigure.SecurityAutoConfiguration",
        "org.springframework.boot.security.autoconfigure.UserDetailsServiceAutoConfiguration",
        "org.springframework.boot.security.autoconfigure.actuate.web.servlet.ManagementWebSecurityAutoConfiguration",
        "org.springframework.boot.security.autoconfigure.web.servlet.SecurityFilterAutoConfiguration",
        "org.springframework.boot.security.autoconfigure.web.servlet.ServletWebSecurityAutoConfiguration",
        "com.vaadin.flow.spring.SpringSecurityAutoConfiguration"})
    @EnableVaadin({"brightseam.ui.parts", "brightseam.ui.chamber"})
    @ComponentScan(basePackages = "brightseam.app", useDefaultFilters = false,
            includeFilters = @ComponentScan.Filter(type = FilterType.REGEX, pattern = ".*AliveController"))
    public static class App {

        @Bean
        TestClock clock() {
            return new TestClock();
        }
    }

    /** Runs in real time and can be moved on. */
    public static final class TestClock implements ShopClock {
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

    @LocalServerPort
    private int port;

    @Autowired
    protected TestClock clock;

    private final List<String> faults = new ArrayList<>();
    protected BrowserContext context;
    protected Page page;

    @BeforeEach
    void open_a_tablet() {
        context = Chromium.browser().newContext();
        page = context.newPage();
        page.setDefaultTimeout(10_000);
        page.onPageError(faults::add);
        page.setViewportSize(1280, 800);
    }

    @AfterEach
    void close_the_tablet() {
        context.close();
        assertThat(faults).as("faults in the page").isEmpty();
    }

    protected final void show(String name) {
        page.navigate("http://localhost:" + port + "/gallery/" + name);
        page.locator(".work-card").first().waitFor();
        page.waitForFunction("() => [...document.querySelectorAll('*')].every(e => !e.localName.startsWith('shop-')"
                + " || customElements.get(e.localName))");
    }

    protected final void photograph(String name) {
        int width = page.viewportSize().width;
        int height = page.viewportSize().height;
        page.screenshot(new Page.ScreenshotOptions()
                .setFullPage(true)
                .setPath(Path.of("target/screenshots/parts-%s-%dx%d.png".formatted(name, width, height))));
    }

    protected final void targets(String within) {
        List<Target> targets = boxes(within);
        for (Target one : targets) {
            assertThat(Math.min(one.width(), one.height())).as("size of " + one.words())
                    .isGreaterThanOrEqualTo(one.main() ? MAIN_PX : OTHER_PX);
            targets.stream().filter(other -> other != one).forEach(other -> assertThat(one.distance(other))
                    .as("gap between %s and %s", one.words(), other.words()).isGreaterThanOrEqualTo(GAP_PX));
        }
    }

    @SuppressWarnings("unchecked")
    private List<Target> boxes(String within) {
        List<Map<String, Object>> found = (List<Map<String, Object>>) page.locator(within).evaluate("""
                root => [...root.querySelectorAll('button')].map(e => ({ ...e.getBoundingClientRect().toJSON(),
                  words: e.innerText, main: e.classList.contains('main') })).filter(box => box.width > 0)""");
        return found.stream().map(box -> new Target((String) box.get("words"), (boolean) box.get("main"),
                number(box, "x"), number(box, "y"), number(box, "width"), number(box, "height"))).toList();
    }

    private static double number(Map<String, Object> box, String name) {
        return ((Number) box.get(name)).doubleValue();
    }

    /** A button on the screen, in CSS px. */
    private record Target(String words, boolean main, double x, double y, double width, double height) {

        double distance(Target other) {
            double across = Math.max(x, other.x) - Math.min(x + width, other.x + other.width);
            double down = Math.max(y, other.y) - Math.min(y + height, other.y + other.height);
            return Math.max(across, down);
        }
    }

    final void wedge(String text, String... then) {
        page.keyboard().type(text, new Keyboard.TypeOptions().setDelay(1));
        for (String key : then) {
            page.keyboard().press(key);
        }
    }
}

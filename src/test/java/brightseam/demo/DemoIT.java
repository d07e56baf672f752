package brightseam.demo;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.ShopServer;
import brightseam.browser.ShopTablet;
import brightseam.kernel.Moment;
import brightseam.kernel.shell.DemoClock;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Page;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** The demo's own page in a real browser. */
class DemoIT {

    @Test
    void anybody_signed_in_hurries_the_clock_and_prints_the_labels() {
        DemoPerson ilka = DemoPerson.ILKA_FERROW;
        try (ShopServer shop = ShopServer.demo("--brightseam.demo-past=false",
                        "--brightseam.scanner-burst-millis=300", "--brightseam.scanner-idle-millis=500");
                ShopTablet tablet = new ShopTablet(shop.url(), "demo")) {
            Page page = tablet.signIn(ilka.badge().value(), ilka.pin()).page();
            page.navigate("/demo");
            assertThat(page.locator("h1")).hasText("Demo");
            DemoClock clock = shop.bean(DemoClock.class);
            Moment before = clock.now();
            tablet.press("Skip 1 h").press("Run ×10");
            assertThat(page.locator(".demo-mark")).containsText("×10");
            assertThat(clock.speed()).isEqualTo(10);
            assertThat(clock.now().since(before)).isGreaterThan(Duration.ofHours(1));
            assertThat(page.locator("table").first()).containsText(ilka.badge().value());
            tablet.press("Oxygen analyser frozen");
            assertThat(page.locator("[role=status]").last()).containsText("Done: Oxygen analyser frozen.");
            tablet.press("Everything works again");
            look(page);
            APIResponse sheet = page.request().get("/demo-labels.pdf");
            assertThat(sheet.status()).isEqualTo(200);
            assertThat(new String(sheet.body(), 0, 5, StandardCharsets.ISO_8859_1)).isEqualTo("%PDF-");
        }
    }

    private static void look(Page page) {
        for (int[] size : new int[][] {{1280, 800}, {800, 1280}}) {
            page.setViewportSize(size[0], size[1]);
            page.screenshot(new Page.ScreenshotOptions().setPath(
                    Path.of("target/screenshots/demo-panel-%dx%d.png".formatted(size[0], size[1]))));
        }
        assertThat(new AxeBuilder(page).analyze().getViolations()).isEmpty();
    }
}

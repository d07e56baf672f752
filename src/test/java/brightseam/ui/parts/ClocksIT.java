package brightseam.ui.parts;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What time, a cut network and a dead or restarted server do to a page. */
class ClocksIT extends TabletAtParts {

    private static final String LEFT = "before => document.querySelector('.hold-digits').textContent.split(':')"
            + ".reduce((minutes, seconds) => 60 * minutes + +seconds)";

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
        long since = System.nanoTime();
        page.waitForFunction(LEFT + " <= before - 3", before, new Page.WaitForFunctionOptions().setTimeout(5000));
        assertThat(Duration.ofNanos(System.nanoTime() - since).toMillis()).isBetween(1900L, 4000L);
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
                new Route.FulfillOptions().setStatus(204).setHeaders(Map.of("Shop-Boot", "new"))));
        page.waitForFunction("window.stillTheSamePage === undefined", null,
                new Page.WaitForFunctionOptions().setTimeout(6000));
    }

    @Test
    void the_heartbeat_puts_a_clock_right_that_went_wrong() {
        show("holding");
        int before = digits();
        clock.skip(Duration.ofSeconds(40));
        page.waitForFunction(LEFT + " <= before - 40", before, new Page.WaitForFunctionOptions().setTimeout(5000));
    }

    @Test
    void a_hold_sounds_before_its_limit_and_tells_when_it_passes_it() {
        page.addInitScript("window.tones = []; addEventListener('shop-tone', e => tones.push(e.detail.name))");
        show("soon");
        page.waitForFunction("tones.includes('before-minimum')");
        clock.skip(Duration.ofSeconds(30));
        assertThat(page.locator(".phases")).hasText("open", new LocatorAssertions.HasTextOptions().setTimeout(5000));
        clock.skip(Duration.ofSeconds(200));
        assertThat(page.locator(".phases")).hasText("open over",
                new LocatorAssertions.HasTextOptions().setTimeout(5000));
        page.waitForFunction("tones.includes('overrun')");
    }

    private int digits() {
        String[] parts = page.locator(".hold-digits").innerText().split(":");
        return Integer.parseInt(parts[0]) * 60 + Integer.parseInt(parts[1]);
    }
}

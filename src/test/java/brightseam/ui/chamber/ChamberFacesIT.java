package brightseam.ui.chamber;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.ui.parts.TabletAtParts;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Locator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How the cards of a session look, and what the arc's switch does. */
class ChamberFacesIT extends TabletAtParts {

    private static final double DIGITS_PX = 120;
    private static final int[][] TABLETS = {{1280, 800}, {800, 1280}};

    @ParameterizedTest
    @ValueSource(strings = {"check-in", "cautions", "gloves", "pin", "reason", "closed", "purging", "levels-off", "fit",
        "unfit", "lock-open", "lock-purging", "lock-argon", "lock-inner", "joint-asks", "joint", "arc", "arc-above",
        "cooling", "ending", "over"})
    void every_card_is_legible_large_enough_and_reaches_no_further_than_the_screen(String card) {
        show("chamber/" + card);
        for (int[] tablet : TABLETS) {
            page.setViewportSize(tablet[0], tablet[1]);
            photograph("chamber-" + card);
            targets("body");
            assertThat((int) page.evaluate("document.documentElement.scrollWidth")).as("width of the page")
                    .isLessThanOrEqualTo(tablet[0]);
            for (Locator digits : page.locator(".big-digits, .run-digits, .hold-digits").all()) {
                assertThat(((Number) digits.evaluate("e => parseFloat(getComputedStyle(e).fontSize)")).doubleValue())
                        .isGreaterThanOrEqualTo(DIGITS_PX);
            }
        }
        assertThat(new AxeBuilder(page).analyze().getViolations().stream().map(found -> found.getId() + ": "
                + found.getNodes().getFirst().getHtml()).toList()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"joint", "arc", "arc-above"})
    void the_switch_takes_the_lower_half_of_the_screen(String card) {
        show("chamber/" + card);
        for (int[] tablet : TABLETS) {
            page.setViewportSize(tablet[0], tablet[1]);
            double height = ((Number) page.locator("button.arc").evaluate("e => e.getBoundingClientRect().height"))
                    .doubleValue();
            double foot = ((Number) page.locator("button.arc").evaluate("e => e.getBoundingClientRect().bottom"))
                    .doubleValue();
            assertThat(height).as("at " + tablet[0]).isGreaterThanOrEqualTo(0.43 * tablet[1]);
            assertThat(foot).as("reached without scrolling").isLessThanOrEqualTo(tablet[1]);
        }
    }

    @Test
    void a_touch_and_the_foot_switch_do_the_same_and_a_trembling_foot_is_one_press() {
        show("chamber/joint");
        assertThat(page.locator(".foot-state")).hasText("Foot switch armed: key F9 begins the arc.");
        page.locator("button.arc").click();
        assertThat(page.locator(".arc-words")).hasText("Arc off");
        assertThat(page.locator(".said")).hasText("start 0");
        double settled = ((Number) page.evaluate("performance.now() + 800")).doubleValue();
        page.waitForFunction("settled => performance.now() > settled", settled);
        page.keyboard().press("F9");
        page.keyboard().press("F9");
        page.keyboard().press("F9");
        assertThat(page.locator(".arc-words")).hasText("Arc on");
        assertThat(page.locator(".said")).hasText("start 0 stop 1");
    }

    @Test
    void a_tablet_keeps_the_key_of_its_own_foot_switch_and_takes_none_that_a_scanner_sends() {
        show("chamber/joint");
        page.getByText("Another foot switch").click();
        page.keyboard().press("a");
        assertThat(page.locator(".foot-says")).containsText("Key a is used for scanning or typing.");
        page.keyboard().press("F7");
        assertThat(page.locator(".foot-state")).containsText("key F7");
        page.reload();
        show("chamber/joint");
        assertThat(page.locator(".foot-state")).containsText("key F7");
        page.keyboard().press("F9");
        page.keyboard().press("F7");
        assertThat(page.locator(".said")).hasText("start 0");
    }

    @Test
    void no_press_waits_for_a_server_that_is_away() {
        show("chamber/joint");
        context.setOffline(true);
        assertThat(page.locator("shop-link .link-band")).isVisible();
        page.keyboard().press("F9");
        page.locator("button.arc").click();
        assertThat(page.locator("shop-link .link-band")).containsText("Not taken");
        context.setOffline(false);
        assertThat(page.locator("shop-link .link-band")).containsText("The server is back");
        assertThat(page.locator("shop-link .link-band")).hasCount(0);
        assertThat(page.locator(".said")).hasText("");
        assertThat(page.locator(".arc-words")).hasText("Arc on");
    }
}

package brightseam.ui.parts;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.args.AxeRuleOptions;
import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How the parts look and what they do when they are pressed. */
class PartsIT extends TabletAtParts {

    private static final double DIGITS_PX = 120;
    private static final int[][] TABLETS = {{1280, 800}, {800, 1280}};

    @Test
    void readings_and_pins_are_entered_on_keys_of_our_own() {
        show("reading");
        press("5", "2", ".", "5", "7", "+/−", "Enter");
        assertThat(page.locator(".entered")).hasText("Entered -52.5");
        press("Clear", "Enter");
        assertThat(page.locator(".pad-fault")).hasText("First press the digits.");
        show("pin");
        press("1", "2", "3", "4");
        assertThat(page.locator(".pad-dots i.filled")).hasCount(4);
        press("Enter");
        assertThat(page.locator(".entered")).hasText("Entered 1234");
        assertThat(page.locator(".pad-dots i.filled")).hasCount(0);
        show("look");
        press("Not in order", "Enter");
        assertThat(page.locator(".entered")).hasText("Entered 0");
    }

    private void press(String... keys) {
        for (String key : keys) {
            page.locator("shop-key-pad").getByText(key, new Locator.GetByTextOptions().setExact(true)).click();
        }
    }

    @Test
    void accepted_goes_by_itself_and_refused_stays_until_it_is_dealt_with() {
        page.clock().install();
        show("accepted");
        assertThat(page.locator("shop-verdict[role=alert] .verdict-word")).hasText("Signed");
        page.clock().runFor(6000);
        assertThat(page.locator(".verdict")).hasCount(0);
        show("refused");
        assertThat(page.locator(".verdict-way-out")).hasText("Scan a clean bin.");
        page.clock().runFor(60_000);
        assertThat(page.locator(".verdict-way-out")).isVisible();
        page.getByText("Seen").click();
        assertThat(page.locator(".verdict")).hasCount(0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"bench", "accepted", "refused", "holding", "clocks", "pads", "fields", "charts"})
    void every_part_is_large_enough_legible_and_reaches_no_further_than_the_screen(String name) {
        show(name);
        for (int[] tablet : TABLETS) {
            page.setViewportSize(tablet[0], tablet[1]);
            photograph(name);
            targets("body");
            fits();
        }
        violations();
        page.addStyleTag(new Page.AddStyleTagOptions().setContent("html { font-size: 200% }"));
        fits();
    }

    private void fits() {
        assertThat((int) page.evaluate("document.documentElement.scrollWidth")).as("width of the page")
                .isLessThanOrEqualTo(page.viewportSize().width);
        for (Locator digits : page.locator(".hold-digits").all()) {
            assertThat(((Number) digits.evaluate("e => parseFloat(getComputedStyle(e).fontSize)")).doubleValue())
                    .isGreaterThanOrEqualTo(DIGITS_PX);
            assertThat((boolean) digits.evaluate("e => e.scrollWidth <= e.clientWidth")).as("digits fit").isTrue();
        }
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

package brightseam.browser;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.TravellerId;
import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.List;

/** Somebody who looks at the open board all the time and notes when each line began to say something else. */
final class BoardWatch {

    /** A second is the aim; more is allowed here, because the machine does other things too. */
    private static final double PATIENCE_MILLIS = 5_000;
    private static final String NOTE = """
            window.lines = {};
            new MutationObserver(() => document.querySelectorAll('.board-row').forEach(row => {
              const said = window.lines[row.dataset.traveller] ??= [];
              if (said.at(-1)?.text !== row.innerText) {
                said.push({ at: Date.now(), text: row.innerText });
              }
            })).observe(document, { subtree: true, childList: true, characterData: true });""";
    private static final String SAID = """
            ([id, words, since]) => (window.lines[id] ?? [])
              .find(said => said.at >= since && said.text.includes(words))?.at""";

    private final Page page;
    private final List<String> measured = new ArrayList<>();

    /** Watches from the next page on that {@code tablet} loads. */
    BoardWatch(ShopTablet tablet) {
        page = tablet.page();
        page.addInitScript(NOTE);
    }

    /** The line of {@code id} says {@code words} soon after {@code sinceMillis} (machine time). */
    void says(TravellerId id, String words, long sinceMillis) {
        Number at = (Number) page.waitForFunction(SAID, List.of(id.value(), words, (double) sinceMillis),
                new Page.WaitForFunctionOptions().setTimeout(PATIENCE_MILLIS)).jsonValue();
        measured.add("%5d ms  %s: %s".formatted(at.longValue() - sinceMillis, id, words));
        assertThat(page.locator("[data-traveller='" + id + "']").innerText()).contains(words);
    }

    /** How long each change took from the press elsewhere to the board, one a line. */
    String measured() {
        return String.join("\n", measured);
    }
}

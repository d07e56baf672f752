package brightseam.ui.board;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.Chromium;
import brightseam.browser.ShopServer;
import brightseam.demo.DemoPerson;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A person at a desk or with a tablet, signed in, in a real browser. */
public final class DeskBrowser implements AutoCloseable {

    private static final int[][] SIZES = {{1280, 800}, {800, 1280}};

    private final ShopServer shop;
    private final BrowserContext context;
    private final Page page;
    private final List<String> faults = new ArrayList<>();

    /** Signs {@code who} in. */
    public DeskBrowser(ShopServer shop, DemoPerson who) {
        this.shop = shop;
        this.context = Chromium.browser().newContext(new Browser.NewContextOptions().setViewportSize(1280, 800)
                .setLocale("en-GB"));
        this.page = context.newPage();
        page.setDefaultTimeout(8_000);
        page.onPageError(faults::add);
        page.navigate(shop.url("/sign-in?badge=" + who.badge()));
        for (char digit : who.pin().toCharArray()) {
            page.getByRole(AriaRole.BUTTON, exactly(String.valueOf(digit))).click();
        }
        page.getByRole(AriaRole.BUTTON, exactly("Enter")).click();
        page.waitForURL(url -> !url.contains("sign-in"));
    }

    /** The page. */
    public Page page() {
        return page;
    }

    /** Goes to a page of the desks. */
    public DeskBrowser open(String path) {
        page.navigate(shop.url(path));
        page.locator(".desk-head h1").waitFor();
        return this;
    }

    /** Fills the field with this label. */
    public DeskBrowser fill(String label, String text) {
        page.getByLabel(label, new Page.GetByLabelOptions().setExact(true)).first().fill(text);
        return this;
    }

    /** Presses the button that says exactly this. */
    public DeskBrowser press(String words) {
        page.getByRole(AriaRole.BUTTON, exactly(words)).first().click();
        return this;
    }

    /** Chooses from the list with this label. */
    public DeskBrowser choose(String label, String item) {
        page.locator("vaadin-select").filter(new Locator.FilterOptions().setHasText(label)).first().click();
        page.getByRole(AriaRole.OPTION, new Page.GetByRoleOptions().setName(item)).first().click();
        return this;
    }

    /** Picks one of several that stand side by side. */
    public DeskBrowser picks(String words) {
        page.getByLabel(words, new Page.GetByLabelOptions().setExact(true)).first().check();
        return this;
    }

    /** Waits until the band says so. */
    public DeskBrowser hears(String word) {
        page.locator("shop-verdict").filter(new Locator.FilterOptions().setHasText(word)).first().waitFor();
        return this;
    }

    /** Waits until the page says so. */
    public DeskBrowser shows(String words) {
        page.getByText(words).first().waitFor();
        return this;
    }

    /** Looks at the page in both positions of a tablet: photographs it, and nothing may be wrong with it. */
    public DeskBrowser look(String name) {
        for (int[] size : SIZES) {
            page.setViewportSize(size[0], size[1]);
            page.screenshot(new Page.ScreenshotOptions().setFullPage(true).setPath(
                    Path.of("target/screenshots/desk-%s-%dx%d.png".formatted(name, size[0], size[1]))));
            int wider = (int) page.evaluate("document.documentElement.scrollWidth - window.innerWidth");
            assertThat(wider).as(name + ": wider than the screen by").isLessThanOrEqualTo(0);
        }
        page.setViewportSize(SIZES[0][0], SIZES[0][1]);
        assertThat(new AxeBuilder(page).analyze().getViolations())
                .as(name).extracting(found -> found.getId() + " " + found.getNodes().getFirst().getHtml()).isEmpty();
        assertThat(faults).as("what the page threw").isEmpty();
        return this;
    }

    @Override
    public void close() {
        context.close();
    }

    private static Page.GetByRoleOptions exactly(String words) {
        return new Page.GetByRoleOptions().setName(words).setExact(true);
    }
}

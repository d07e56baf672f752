package brightseam.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.scan.LabelKind;
import brightseam.scan.OwnLabel;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Keyboard;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** One tablet in a person's hands: a browser of its own, a hand scanner, fingers. */
public final class ShopTablet implements AutoCloseable {

    private static final double MAIN_PX = 128;
    private static final double OTHER_PX = 76;
    private static final double APART_PX = 15.5;
    private static final double PATIENCE_MILLIS = 20_000;
    private static final int[][] WAYS_UP = {{1280, 800}, {800, 1280}};

    private final BrowserContext context;
    private final Page page;
    private final String name;
    private final List<String> faults = new ArrayList<>();
    private long pressedAtMillis;

    /** A new tablet at the shop's {@code address}; {@code name} begins the names of its pictures. */
    public ShopTablet(String address, String name) {
        this(Chromium.browser(), address, name);
    }

    /** A new tablet with a browser that was started for it, such as one with a camera. */
    public ShopTablet(Browser browser, String address, String name) {
        this.name = name;
        context = browser.newContext(new Browser.NewContextOptions()
                .setBaseURL(address).setViewportSize(1280, 800).setLocale("en-GB"));
        page = context.newPage();
        page.setDefaultTimeout(PATIENCE_MILLIS);
        page.onPageError(faults::add);
    }

    /** The page, for what is said about it. */
    public Page page() {
        return page;
    }

    /** Goes to {@code path}, which begins with a slash. */
    public ShopTablet open(String path) {
        page.navigate(path);
        ready();
        return this;
    }

    /** Signs in by scanning the badge and pressing the PIN. */
    public ShopTablet signIn(String badge, String pin) {
        open("/sign-in");
        scan(LabelKind.BADGE, badge);
        enter(pin);
        page.waitForURL(url -> !url.contains("sign-in"));
        ready();
        return this;
    }

    /** Scans one of the shop's labels with the hand scanner, separators and all. */
    public ShopTablet scan(LabelKind kind, String id) {
        return wedge(new OwnLabel(kind, id).payload());
    }

    /** Sends {@code data} as a hand scanner does. */
    public ShopTablet wedge(String data) {
        StringBuilder plain = new StringBuilder();
        for (char c : data.toCharArray()) {
            String key = switch (c) {
                case 0x1d -> "Control+]";
                case 0x1e -> "Control+^";
                case 0x04 -> "Control+d";
                default -> "";
            };
            if (key.isEmpty()) {
                plain.append(c);
            } else {
                type(plain);
                page.keyboard().press(key);
            }
        }
        type(plain);
        page.keyboard().press("Enter");
        return this;
    }

    private void type(StringBuilder plain) {
        page.keyboard().type(plain.toString(), new Keyboard.TypeOptions().setDelay(0));
        plain.setLength(0);
    }

    /** Presses digits on the key pad, then Enter. */
    public ShopTablet enter(String digits) {
        Locator pad = page.locator("shop-key-pad");
        for (char digit : digits.toCharArray()) {
            pad.locator("button").getByText(String.valueOf(digit), new Locator.GetByTextOptions().setExact(true))
                    .click();
        }
        pressedAtMillis = System.currentTimeMillis();
        pad.locator(".pad-enter").click();
        return this;
    }

    /** Presses the button that says {@code words}. */
    public ShopTablet press(String words) {
        pressedAtMillis = System.currentTimeMillis();
        page.locator("button", new Page.LocatorOptions().setHasText(words)).first().click();
        return this;
    }

    /** Presses a desk's button that says exactly {@code words}. */
    public ShopTablet push(String words) {
        pressedAtMillis = System.currentTimeMillis();
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(words).setExact(true)).first().click();
        return this;
    }

    /** When the last press began, in machine time. */
    public long pressedAtMillis() {
        return pressedAtMillis;
    }

    /** Fills the first field of a desk that is labelled exactly {@code label}. */
    public ShopTablet fill(String label, String text) {
        Locator field = page.getByLabel(label, new Page.GetByLabelOptions().setExact(true)).first();
        field.fill(text);
        field.blur();
        return this;
    }

    /** Cuts the tablet off the network, or brings it back. */
    public ShopTablet network(boolean there) {
        context.setOffline(!there);
        return this;
    }

    /** The verdict's word has to be {@code word}. */
    public ShopTablet hears(String word) {
        assertThat(page.locator(".verdict-word")).hasText(word, new LocatorAssertions.HasTextOptions()
                .setTimeout(PATIENCE_MILLIS));
        return this;
    }

    /** The card's title has to be {@code title}. */
    public ShopTablet shows(String title) {
        assertThat(page.locator(".work-card h1")).hasText(title, new LocatorAssertions.HasTextOptions()
                .setTimeout(PATIENCE_MILLIS));
        return this;
    }

    /** No card is open: the bench asks for a scan, or shows the loads that run. */
    public ShopTablet showsNoCard() {
        page.locator(".work-card.idle").waitFor(new com.microsoft.playwright.Locator.WaitForOptions()
                .setTimeout(PATIENCE_MILLIS));
        return this;
    }

    /** Takes a refused verdict away. */
    public ShopTablet seen() {
        page.locator(".verdict button").click();
        assertThat(page.locator(".verdict")).hasCount(0);
        return this;
    }

    /** Waits until every part of the page is alive. */
    public ShopTablet ready() {
        page.locator(".work-card, .desk-head h1").first().waitFor();
        page.waitForFunction("() => [...document.querySelectorAll('*')].every(e => !e.localName.startsWith('shop-')"
                + " || customElements.get(e.localName))");
        return this;
    }

    /** Looks at the page both ways up: no accessibility fault, every target large enough and apart; takes pictures. */
    public ShopTablet look(String state) {
        for (int[] size : WAYS_UP) {
            page.setViewportSize(size[0], size[1]);
            page.screenshot(new Page.ScreenshotOptions().setFullPage(true)
                    .setPath(Path.of("target/screenshots/%s-%s-%dx%d.png".formatted(name, state, size[0], size[1]))));
            assertThat(number("document.documentElement.scrollWidth")).as(state + ": width")
                    .isLessThanOrEqualTo(size[0]);
            targets(state);
        }
        page.setViewportSize(1280, 800);
        assertThat(new AxeBuilder(page).analyze().getViolations().stream().map(found -> found.getId() + ": "
                + found.getNodes().getFirst().getHtml()).toList()).as(state).isEmpty();
        return this;
    }

    private double number(String script) {
        return ((Number) page.evaluate(script)).doubleValue();
    }

    @SuppressWarnings("unchecked")
    private void targets(String state) {
        List<Map<String, Object>> boxes = (List<Map<String, Object>>) page.evaluate("""
                () => [...document.querySelectorAll('button')].map(e => ({ ...e.getBoundingClientRect().toJSON(),
                  words: e.innerText, main: e.classList.contains('main') })).filter(box => box.width > 0)""");
        for (Map<String, Object> one : boxes) {
            assertThat(Math.min(of(one, "width"), of(one, "height"))).as("%s: size of %s", state, one.get("words"))
                    .isGreaterThanOrEqualTo((boolean) one.get("main") ? MAIN_PX : OTHER_PX);
            boxes.stream().filter(other -> other != one).forEach(other -> assertThat(apart(one, other))
                    .as("%s: %s and %s apart", state, one.get("words"), other.get("words"))
                    .isGreaterThanOrEqualTo(APART_PX));
        }
    }

    private static double apart(Map<String, Object> one, Map<String, Object> other) {
        double across = Math.max(of(one, "left") - of(other, "right"), of(other, "left") - of(one, "right"));
        double down = Math.max(of(one, "top") - of(other, "bottom"), of(other, "top") - of(one, "bottom"));
        return Math.max(across, down);
    }

    private static double of(Map<String, Object> box, String name) {
        return ((Number) box.get(name)).doubleValue();
    }

    /** Puts the tablet away; a fault in its page fails the test. */
    @Override
    public void close() {
        context.close();
        assertThat(faults).as("faults in the page").isEmpty();
    }
}

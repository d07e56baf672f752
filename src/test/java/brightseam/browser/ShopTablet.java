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
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** One tablet in a person's hands: a browser of its own, a hand scanner, fingers. */
public final class ShopTablet implements AutoCloseable {

    private static final double MAIN_PX = 128;
    private static final double OTHER_PX = 76;
    private static final double APART_PX = 15.5;
    private static final int[][] WAYS_UP = {{1280, 800}, {800, 1280}};

    private final BrowserContext context;
    private final Page page;
    private final String name;
    private final List<String> faults = new ArrayList<>();

    /** A new tablet at the shop's {@code address}; {@code name} begins the names of its pictures. */
    public ShopTablet(String address, String name) {
        this.name = name;
        context = Chromium.browser().newContext(new Browser.NewContextOptions()
                .setBaseURL(address).setViewportSize(1280, 800));
        page = context.newPage();
        page.setDefaultTimeout(10_000);
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
        pad.locator(".pad-enter").click();
        return this;
    }

    /** Presses the button that says {@code words}. */
    public ShopTablet press(String words) {
        page.locator("button", new Page.LocatorOptions().setHasText(words)).first().click();
        return this;
    }

    /** The verdict's word has to be {@code word}. */
    public ShopTablet hears(String word) {
        assertThat(page.locator(".verdict-word")).hasText(word);
        return this;
    }

    /** The card's title has to be {@code title}. */
    public ShopTablet shows(String title) {
        assertThat(page.locator(".work-card h1")).hasText(title);
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
        page.locator(".work-card").first().waitFor();
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

package brightseam.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.scan.LabelKind;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.Page;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * A fabricator who does what the card says, as it says it, and knows nothing else; every answer has to be a good one.
 */
final class Fabricator {

    private static final int ACTIONS_MAX = 80;
    private static final Duration A_LITTLE_LONGER = Duration.ofSeconds(2);
    private static final String LOOK = """
            () => {
              const card = document.querySelector('.work-card');
              const text = where => [...card.querySelectorAll(where)].find(e => !e.closest('shop-key-pad'))?.innerText;
              return { title: text('h1'), ask: text('.ask') ?? '', main: text('.action.main') ?? '',
                hold: card.querySelector('shop-hold-clock .hold-digits')?.innerText ?? '',
                pad: card.querySelector('shop-key-pad')?.getAttribute('mode') ?? '',
                label: card.querySelector('shop-key-pad .pad-label')?.innerText ?? '',
                scan: card.querySelector('.scans li:not(.ticked) span')?.innerText ?? '' };
            }""";
    private static final Map<String, String> STATIONS = Map.ofEntries(
            Map.entry("saw", "S-SAW-1"), Map.entry("cope machine", "S-COPE-1"),
            Map.entry("deburr bench", "S-DEBURR-2"), Map.entry("inspection bench", "S-INSP-1"),
            Map.entry("degrease tank", "S-DEGREASE-1"), Map.entry("rinse tank", "S-RINSE-2"),
            Map.entry("pickle tank", "S-PICKLE-1"), Map.entry("deionised rinse tank", "S-DI-1"),
            Map.entry("dryer", "S-DRYER-1"), Map.entry("wipe bench", "S-WIPE-1"),
            Map.entry("bagging bench", "S-BAG-1"), Map.entry("transfer lock", "S-LOCK-1"));
    private static final Map<String, String> READINGS = Map.of("Vent hole diameter", "2.1",
            "Widest gap at the cope", "0.11", "Acid pickle: Bath temperature", "31", "Bath temperature", "68",
            "Rinse water", "240", "Nitric acid in the last analysis", "25.0",
            "Hydrofluoric acid in the last analysis", "1.5", "Deionised water", "4.2", "Dryer air", "72");

    private final ShopTablet tablet;
    private final String pin;
    private final Map<String, String> bins;
    private final Map<String, String> supplies;
    private final Consumer<Duration> pass;
    private final List<String> signed = new ArrayList<>();
    private long signedAtMillis;

    /**
     * A fabricator at {@code tablet}.
     *
     * @param bins a label for each class of bin, as the card names it
     * @param supplies a label for each type of supply, as the card names it
     * @param pass lets shop time pass
     */
    Fabricator(ShopTablet tablet, String pin, Map<String, String> bins, Map<String, String> supplies,
            Consumer<Duration> pass) {
        this.tablet = tablet;
        this.pin = pin;
        this.bins = bins;
        this.supplies = supplies;
        this.pass = pass;
    }

    /** What the card shows. */
    record Face(String title, String ask, String main, String hold, String pad, String label, String scan) {

        boolean says(String words) {
            return (title + "\n" + ask + "\n" + main + "\n" + label).contains(words);
        }
    }

    /** The steps signed so far, in order, as the card called them. */
    List<String> signed() {
        return List.copyOf(signed);
    }

    /** Does one thing after the other until the card of step {@code title} says {@code words}. */
    Face until(String title, String words) {
        for (int actions = 0; actions < ACTIONS_MAX; actions++) {
            Face face = look();
            if (face.title().equals(title) && face.says(words)) {
                return face;
            }
            act(face);
        }
        throw new AssertionError("the card never came to " + title + ": " + words);
    }

    /** What the card shows now. */
    @SuppressWarnings("unchecked")
    Face look() {
        Map<String, String> seen = (Map<String, String>) tablet.page().evaluate(LOOK);
        return new Face(seen.get("title"), seen.get("ask"), seen.get("main"), seen.get("hold"), seen.get("pad"),
                seen.get("label"), seen.get("scan"));
    }

    /** Does what {@code face} asks for. */
    void act(Face face) {
        if (!face.hold().isEmpty()) {
            endHold(face);
        } else if (face.pad().equals("pin")) {
            sign(face.title());
        } else if (face.pad().equals("pass-fail")) {
            answered("Written down", () -> tablet.press("In order").press("Enter"));
        } else if (face.pad().equals("reading")) {
            String value = READINGS.getOrDefault(face.title() + ": " + face.label(), READINGS.get(face.label()));
            answered("Written down", () -> tablet.enter(value));
        } else if (face.ask().contains("scan its label")) {
            answered("Right bin", () -> tablet.scan(LabelKind.BIN, label(bins, face.ask())));
        } else if (!face.scan().isEmpty()) {
            answered("Right .*", () -> tablet.scan(LabelKind.SUPPLY, supplies.entrySet().stream()
                    .filter(known -> face.scan().startsWith(known.getKey())).map(Map.Entry::getValue)
                    .findFirst().orElseThrow(() -> new AssertionError("nothing known for: " + face.scan()))));
        } else if (face.ask().startsWith("Scan the label of the ")) {
            answered("Right station", () -> tablet.scan(LabelKind.STATION, label(STATIONS, face.ask())));
        } else {
            pressMain(face);
        }
    }

    /** When the last signature was pressed, in machine time. */
    long signedAtMillis() {
        return signedAtMillis;
    }

    private void sign(String title) {
        answered("Signed", () -> tablet.enter(pin));
        signedAtMillis = tablet.pressedAtMillis();
        signed.add(title);
    }

    private void endHold(Face face) {
        Locator done = tablet.page().locator(".work-card .action.main");
        if (done.isDisabled()) {
            String[] digits = face.hold().split(":");
            pass.accept(Duration.ofMinutes(Long.parseLong(digits[0])).plusSeconds(Long.parseLong(digits[1]))
                    .plus(A_LITTLE_LONGER));
            assertThat(done).isEnabled(new LocatorAssertions.IsEnabledOptions()
                    .setTimeout(20_000));
        }
        answered("Time kept", done::click);
    }

    private void pressMain(Face face) {
        switch (face.main()) {
            case "The clock starts now" -> answered("Begun", () -> tablet.press(face.main()));
            case "Sealed", "Lid is on" -> answered("Closed", () -> tablet.press(face.main()));
            default -> {
                assertThat(face.main()).as("asked by %s", face).matches("(Cautions read|Gloves on).*");
                tablet.press(face.main());
                tablet.page().waitForFunction(
                        "words => ![...document.querySelectorAll('.action.main')].some(e => e.innerText === words)",
                        face.main());
            }
        }
    }

    /** Acts, and waits for the answer to that very act. */
    void answered(String word, Runnable act) {
        Locator band = tablet.page().locator("shop-verdict");
        String before = band.getAttribute("run");
        act.run();
        tablet.page().waitForFunction(
                "before => ![null, undefined, before].includes("
                        + "document.querySelector('shop-verdict')?.getAttribute('run'))", before);
        assertThat(band.getAttribute("word")).as("%s %s", band.getAttribute("reason"), look()).matches(word);
    }

    private static String label(Map<String, String> labels, String ask) {
        return labels.entrySet().stream().filter(entry -> ask.contains("the " + entry.getKey() + " to")
                || ask.contains("a " + entry.getKey()) || ask.contains("or " + entry.getKey()))
                .map(Map.Entry::getValue).findFirst()
                .orElseThrow(() -> new AssertionError("nothing known for: " + ask));
    }
}

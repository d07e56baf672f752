package brightseam.ui.stamp;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.Chromium;
import brightseam.browser.ShopServer;
import brightseam.kernel.BadgeId;
import brightseam.kernel.Origin;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.ShopClock;
import brightseam.people.PersonCommand;
import brightseam.people.Role;
import brightseam.people.Signer;
import brightseam.people.shell.People;
import brightseam.traveller.Disposition;
import brightseam.traveller.Nonconformance;
import brightseam.traveller.StepRun;
import brightseam.traveller.Traveller;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.InspectorActions;
import brightseam.traveller.shell.LiveTravellers;
import brightseam.traveller.shell.Travellers;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;

/** The inspector's desk in a real browser on the demo shop: read, stamp, reject, decide, correct, print. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class StampIT {

    private static final Path SHOTS = Path.of("target/screenshots");
    private static final double PATIENCE_MILLIS = 15_000;
    private static final String PIN = "725948";
    private static final BadgeId ADMINISTRATOR = new BadgeId("P-0001");
    private static final BadgeId SANNA = new BadgeId("P-0301");

    private static ShopServer server;
    private static BrowserContext context;
    private static Page page;

    @BeforeAll
    static void sign_in() {
        server = ShopServer.demo();
        context = Chromium.browser().newContext();
        page = signedIn(context, SANNA, PIN);
        page.waitForURL("**/stamp");
    }

    @AfterAll
    static void leave() {
        context.close();
        server.close();
    }

    private static Page signedIn(BrowserContext where, BadgeId badge, String pin) {
        Page opened = where.newPage();
        opened.setDefaultTimeout(PATIENCE_MILLIS);
        opened.setViewportSize(1280, 800);
        opened.navigate(server.url("/sign-in?badge=" + badge));
        pin.chars().forEach(digit -> key(opened, String.valueOf((char) digit)));
        key(opened, "Enter");
        opened.waitForURL(url -> !url.contains("sign-in"));
        return opened;
    }

    private static void key(Page opened, String words) {
        opened.locator("shop-key-pad").getByRole(AriaRole.BUTTON,
                new Locator.GetByRoleOptions().setName(words).setExact(true)).click();
    }

    /** Looks at the page both ways round, and lets the accessibility checker look. */
    private static void look(String name, boolean whole) {
        page.waitForFunction("() => [...document.querySelectorAll('*')].every(e => !e.localName.startsWith('shop-')"
                + " || customElements.get(e.localName))");
        for (int[] size : new int[][] {{800, 1280}, {1280, 800}}) {
            page.setViewportSize(size[0], size[1]);
            page.screenshot(new Page.ScreenshotOptions().setFullPage(whole)
                    .setPath(SHOTS.resolve("%s-%dx%d.png".formatted(name, size[0], size[1]))));
            assertThat((int) page.evaluate("document.documentElement.scrollWidth")).isLessThanOrEqualTo(size[0]);
        }
        assertThat(new AxeBuilder(page).analyze().getViolations().stream()
                .map(broken -> broken.getId() + ": " + broken.getNodes().getFirst().getHtml()).toList()).isEmpty();
    }

    private static Traveller traveller(TravellerId id) {
        return server.bean(Travellers.class).find(id).orElseThrow().traveller();
    }

    private static List<Waiting> waiting() {
        return Waiting.among(server.bean(LiveTravellers.class).all(), server.bean(ShopClock.class).now());
    }

    private static TravellerId waitingFor(String what, String why) {
        return waiting().stream().filter(row -> row.what().contains(what) && row.why().contains(why)).findFirst()
                .orElseThrow().id();
    }

    private static void open(TravellerId id) {
        page.navigate(server.url("/stamp/" + id));
        assertThat(page.locator("h1")).containsText(id.value());
    }

    private static void verdict(String word) {
        assertThat(page.locator("shop-verdict .verdict-word")).hasText(word);
    }

    private static void press(Locator within, String words) {
        within.getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName(words).setExact(true)).click();
    }

    private static void choose(Locator form, String item) {
        form.locator("vaadin-select").click();
        page.locator("vaadin-select-item").filter(new Locator.FilterOptions().setHasText(item)).first().click();
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("[\\s\u00a0]+", " ");
        }
    }

    /** A second inspector with a stamp, who works on another tablet. */
    private static Signer second() {
        People people = server.bean(People.class);
        BadgeId badge = new BadgeId("P-0302");
        Origin office = new Origin(server.bean(ShopClock.class).now(), ADMINISTRATOR, "office", true);
        people.run(new PersonCommand.Register(office, badge, "Nel Aske", List.of(Role.INSPECTOR)));
        people.run(new PersonCommand.IssueStamp(office, badge, "BS-09"));
        return Signer.of(people.find(badge).orElseThrow(), "badge+pin");
    }

    @Test
    @Order(1)
    void the_desk_lists_what_waits_with_what_runs_out_first_at_the_top() {
        Locator labels = page.locator(".stamp-label a");
        assertThat(labels).hasText(waiting().stream().map(row -> row.id().value()).toArray(String[]::new));
        assertThat(page.locator("tbody").first()).containsText("Disposition of nonconformance 1");
        look("stamp-desk", true);
    }

    @Test
    @Order(2)
    void the_record_is_read_and_an_entry_corrected_before_an_overrun_pickle_is_decided() {
        TravellerId mast = waitingFor("Disposition", "over its maximum");
        open(mast);
        assertThat(page.locator(".record")).containsText("over the maximum");
        assertThat(page.locator("#decide .stamp-accept")).hasCount(0);
        look("stamp-record", true);
        page.getByText("Correct an entry").click();
        Locator correct = page.locator("#decide details .stamp-form");
        choose(correct, "Bath temperature");
        correct.getByLabel("What it should say").fill("66");
        correct.getByLabel("Why it was wrong").fill("Read from the wrong scale");
        correct.getByLabel("Your PIN").fill(PIN);
        press(correct, "Correct and sign");
        verdict("Corrected");
        assertThat(page.locator(".record s").first()).isVisible();
        Locator form = page.locator(".stamp-disposition");
        form.getByLabel("rework", new Locator.GetByLabelOptions().setExact(true)).check();
        choose(form, "60 Alkaline degrease");
        form.getByLabel("Reason").fill("Wall still 1.2 mm: clean it again");
        form.getByLabel("Your PIN").fill(PIN);
        look("stamp-disposition", false);
        press(form, "Decide and sign");
        verdict("Decided");
        Nonconformance decided = traveller(mast).nonconformances().getFirst();
        assertThat(decided.decision().orElseThrow().disposition()).isEqualTo(Disposition.REWORK);
        assertThat(traveller(mast).currentStep()).contains(new StepId("alkaline-degrease"));
        assertThat(page.locator(".record-superseded")).not().hasCount(0);
    }

    @Test
    @Order(3)
    void a_wrong_pin_stamps_nothing_and_the_right_one_does() {
        TravellerId collars = waitingFor("Readiness inspection", "");
        StepId step = traveller(collars).currentStep().orElseThrow();
        page.navigate(server.url("/stamp"));
        page.locator(".stamp-label a", new Page.LocatorOptions().setHasText(collars.value())).click();
        Locator accept = page.locator(".stamp-accept");
        assertThat(accept.locator(".stamp-number")).hasText("Stamp BS-07");
        accept.getByLabel("Remark (may stay empty)").fill("Seal whole <b>and</b> dry");
        accept.getByLabel("Your PIN").fill("111222");
        press(accept, "Accept and stamp");
        assertThat(page.locator("shop-verdict .verdict[data-kind=refused]")).isVisible();
        assertThat(traveller(collars).isSigned(step)).isFalse();
        accept.getByLabel("Your PIN").fill(PIN);
        press(accept, "Accept and stamp");
        verdict("Stamped");
        look("stamp-accepted", false);
        StepRun run = traveller(collars).run(step).orElseThrow();
        assertThat(run.signature().orElseThrow().signer().stamp()).contains("BS-07");
        assertThat(page.locator(".stamp-accept")).hasCount(0);
        assertThat(page.locator(".stamp-ways").last()).containsText("Next: " + waiting().getFirst().id());
    }

    @Test
    @Order(4)
    void pieces_are_rejected_with_a_reason_and_the_lot_is_in_quarantine() {
        TravellerId gusset = waitingFor("Dimensional inspection", "signed");
        open(gusset);
        Locator reject = page.locator(".stamp-reject");
        reject.getByLabel("Your PIN").fill(PIN);
        press(reject, "Reject");
        verdict("Which pieces?");
        reject.getByLabel("piece 2").check();
        reject.getByLabel("What was found").fill("Cope 0.4 mm short");
        reject.getByLabel("Your PIN").fill(PIN);
        look("stamp-reject", false);
        press(reject, "Reject");
        verdict("Rejected");
        assertThat(traveller(gusset).isInQuarantine()).isTrue();
        assertThat(traveller(gusset).openNonconformances().getFirst().pieces()).containsExactly(2);
        assertThat(page.locator(".stamp-disposition")).hasCount(1);
    }

    @Test
    @Order(5)
    void the_second_of_two_inspectors_is_told_who_stamped() {
        TravellerId stays = waitingFor("Final record review", "closes");
        open(stays);
        assertThat(page.locator(".stamp-accept")).isVisible();
        Signer nel = second();
        server.bean(InspectorActions.class).stamp(new Actor(nel.badge(), "TAB-NEL"), stays,
                traveller(stays).currentStep().orElseThrow(), nel, "");
        verdict("Already signed");
        assertThat(page.locator("shop-verdict")).containsText("Nel Aske");
        look("stamp-second", false);
        assertThat(traveller(stays).hasEnded()).isTrue();
    }

    @Test
    @Order(6)
    void the_finished_record_is_printed_for_inspectors_and_leads_only() throws IOException {
        page.navigate(server.url("/stamp"));
        Locator print = page.getByText("Print the record (PDF)").first();
        assertThat(print).hasAttribute("target", "_blank");
        String path = "/" + print.getAttribute("href");
        APIResponse pdf = page.request().get(server.url(path));
        assertThat(pdf.status()).isEqualTo(200);
        assertThat(pdf.headers()).containsEntry("content-type", "application/pdf");
        Files.write(Files.createDirectories(Path.of("target/prints")).resolve("demo.pdf"), pdf.body());
        assertThat(text(pdf.body())).contains("Nel Aske · stamp BS-09", "Now: closed", "DEMO", "inspected and accepted",
                "Refused attempts", "every hash was derived anew");
        APIResponse csv = page.request().get(server.url(path.replace("record.pdf", "record.csv")));
        assertThat(csv.text()).contains("step-stamped.2").startsWith("stream,version,");
        assertThat(page.request().get(server.url("/stamp/T-9999999/record.pdf")).status()).isEqualTo(404);
        try (BrowserContext another = Chromium.browser().newContext()) {
            Page bench = signedIn(another, new BadgeId("P-0101"), "482615");
            assertThat(bench.request().get(server.url(path)).status()).isEqualTo(403);
        }
    }

    @Test
    @Order(7)
    void everything_that_happened_here_is_on_the_print_of_the_reworked_mast() throws IOException {
        TravellerId mast = new TravellerId("T-1007");
        byte[] pdf = page.request().get(server.url("/stamp/" + mast + "/record.pdf")).body();
        Files.write(Files.createDirectories(Path.of("target/prints")).resolve("mast.pdf"), pdf);
        assertThat(text(pdf)).contains("Read from the wrong scale", "SUPERSEDED", "Wall still 1.2 mm: clean it again",
                "Disposition: rework, back to step 60 Alkaline degrease", "over the maximum");
    }
}

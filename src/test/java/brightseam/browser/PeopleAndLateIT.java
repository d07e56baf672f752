package brightseam.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.demo.DemoPerson;
import brightseam.demo.Lots;
import brightseam.demo.Story;
import brightseam.kernel.BinId;
import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kernel.Refusal;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.Outcome;
import brightseam.people.PinLife;
import brightseam.people.Recognition;
import brightseam.people.Signer;
import brightseam.people.shell.Authenticator;
import brightseam.people.shell.People;
import brightseam.report.shell.Records;
import brightseam.scan.LabelKind;
import brightseam.traveller.NextAction;
import brightseam.traveller.StepRun;
import brightseam.traveller.Traveller;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.TravellerActions;
import brightseam.traveller.shell.Travellers;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** PINs, stamps and late entries in a real browser; every PIN of this shop ends within its warning. */
class PeopleAndLateIT {

    private static final String FIRST = "904716";
    private static final String OWN = "271828";
    private static final StepId CUT = new StepId("cut");

    private static ShopServer server;
    private static int kits;

    @BeforeAll
    static void open_the_demo_shop() {
        server = ShopServer.demo("--brightseam.demo-past=false", "--brightseam.pin-warning-days=365",
                "--brightseam.scanner-burst-millis=1500", "--brightseam.scanner-idle-millis=2000");
    }

    @AfterAll
    static void close_the_shop() {
        server.close();
    }

    @Test
    void a_first_pin_serves_for_choosing_one_s_own_and_for_nothing_else() {
        try (ShopTablet office = new ShopTablet(server.url(), "office");
                ShopTablet tablet = new ShopTablet(server.url(), "first-pin")) {
            warned(office, DemoPerson.ODA_MARSH);
            office.open("/shop/people").fill("Badge", "P-0188").fill("Name", "Mirja Tolv")
                    .fill("First PIN, 4 to 8 digits", FIRST);
            office.page().getByLabel("fabricator").check();
            office.push("Register").page().getByText("exchanged for one that you do not know").waitFor();
            tablet.open("/sign-in").scan(LabelKind.BADGE, "P-0188").shows("Your PIN").enter(FIRST)
                    .shows("Choose your own PIN").look("choose");
            twice(tablet, FIRST).hears("Used before").look("used-before");
            tablet.shows("Choose your own PIN").enter("1111").shows("The same PIN again").look("again");
            tablet.enter("1111").hears("Too easy").shows("Choose your own PIN");
            tablet.enter(OWN).shows("The same PIN again").enter("271829").hears("Two PINs")
                    .shows("Choose your own PIN");
            twice(tablet, OWN).shows("Your PIN ends soon").look("ends-soon");
            tablet.press("Go on").page().waitForURL("**/bench");
            tablet.ready().open("/leave").press("Choose another PIN").shows("Choose another PIN").look("another");
            assertThat(server.bean(People.class).pinStanding(new brightseam.kernel.BadgeId("P-0188")))
                    .contains(PinLife.Standing.ENDS_SOON);
            office.open("/shop/people/P-0188").page().getByText("good until").waitFor();
            office.page().getByText("Set first PIN").waitFor();
        }
    }

    @Test
    void a_step_that_was_done_while_the_tablet_was_down_is_entered_late_with_both_times() {
        TravellerId lot = lot();
        server.bean(Story.class).pass(Duration.ofHours(3));
        try (ShopTablet tablet = new ShopTablet(server.url(), "late")) {
            warned(tablet, DemoPerson.ILKA_FERROW);
            tablet.open("/bench").scan(LabelKind.TRAVELLER, lot.value()).shows("Cut to length");
            tablet.scan(LabelKind.BIN, "B-0116").hears("Right bin").press("Cautions read");
            tablet.scan(LabelKind.SUPPLY, "G-0301").hears("Right tool").look("ready");
            ZonedDateTime now = server.bean(ShopClock.class).now().wall().atZone(ZoneId.systemDefault());
            state(tablet, now.plusMinutes(30));
            tablet.hears("Not yet").look("not-yet").press("Back to the card");
            ZonedDateTime done = now.minusHours(2).truncatedTo(ChronoUnit.MINUTES);
            state(tablet, done);
            tablet.hears("Late entry").look("entered").press("In order").press("Enter").hears("Written down");
            tablet.look("to-sign").enter(DemoPerson.ILKA_FERROW.pin()).hears("Signed");
            StepRun run = card(lot).traveller().run(CUT).orElseThrow();
            assertThat(run.late().orElseThrow().doneAt()).isEqualTo(done.toInstant());
            assertThat(server.bean(Records.class).document(lot).orElseThrow().steps().stream()
                    .flatMap(page -> page.passes().stream()).filter(pass -> pass.late().isPresent())).hasSize(1);
        }
        try (ShopTablet desk = new ShopTablet(server.url(), "late-record")) {
            warned(desk, DemoPerson.SANNA_VEIT);
            desk.open("/stamp/" + lot).page().getByText("LATE ENTRY: done").waitFor();
            pictures(desk, "late-record");
        }
    }

    @Test
    void a_signature_under_what_has_changed_meanwhile_is_refused() {
        TravellerId lot = lot();
        server.bean(Story.class).advance(List.of(lot), next -> next instanceof NextAction.Sign);
        Card read = card(lot);
        TravellerActions actions = server.bean(TravellerActions.class);
        Actor ilka = new Actor(DemoPerson.ILKA_FERROW.badge(), "paper");
        BinId other = new BinId("B-0115");
        assertThat(actions.putInBin(ilka, List.of(lot), other)).isInstanceOf(Outcome.Done.class);
        StepId step = card(lot).currentStep().orElseThrow().id();
        assertThat(actions.signStep(ilka.seeing(List.of(read)), List.of(lot), step, ilka()))
                .isInstanceOfSatisfying(Outcome.Refused.class, refused -> assertThat(codes(refused))
                        .containsExactly("content-changed"));
        Outcome<List<Traveller>> again =
                actions.signStep(ilka.seeing(List.of(card(lot))), List.of(lot), step, ilka());
        assertThat(again).isInstanceOf(Outcome.Done.class);
    }

    @Test
    void the_register_of_stamps_tells_each_one_s_story() {
        try (ShopTablet desk = new ShopTablet(server.url(), "stamps")) {
            warned(desk, DemoPerson.SANNA_VEIT);
            pictures(desk.open("/shop/stamps"), "stamps-register");
            assertThat(desk.page().locator("table")).containsText("BS-07");
            assertThat(desk.page().getByText("Voided")).hasCount(0);
            desk.push("Lost BS-07").fill("Reason", "Fell behind the lathe").push("Lost BS-07, with this reason");
            desk.page().getByText("Nobody signs with it from this moment on").waitFor();
            pictures(desk, "stamps-lost");
        }
        try (ShopTablet office = new ShopTablet(server.url(), "stamps-office")) {
            warned(office, DemoPerson.ODA_MARSH);
            office.open("/shop/stamps").push("Returned BS-07").fill("Reason", "Found by the cleaner")
                    .push("Returned BS-07, with this reason");
            office.page().getByText("Found by the cleaner").waitFor();
            pictures(office, "stamps-returned");
        }
        assertThat(server.bean(People.class).stamps().getFirst().story()).hasSize(3);
    }

    /** Signs in; every PIN of this shop ends soon. */
    private static void warned(ShopTablet tablet, DemoPerson person) {
        tablet.open("/sign-in").scan(LabelKind.BADGE, person.badge().value()).shows("Your PIN").enter(person.pin())
                .shows("Your PIN ends soon").press("Go on").page().waitForURL(url -> !url.contains("sign-in"));
        tablet.ready();
    }

    /** A desk's page both ways up: nothing is cut off at the side, no accessibility fault. */
    private static void pictures(ShopTablet desk, String name) {
        for (int[] size : new int[][] {{1280, 800}, {800, 1280}}) {
            desk.page().setViewportSize(size[0], size[1]);
            desk.page().screenshot(new Page.ScreenshotOptions().setFullPage(true).setPath(
                    Path.of("target/screenshots/%s-%dx%d.png".formatted(name, size[0], size[1]))));
            assertThat(((Number) desk.page().evaluate("document.documentElement.scrollWidth")).intValue())
                    .as(name).isLessThanOrEqualTo(size[0]);
        }
        desk.page().setViewportSize(1280, 800);
        assertThat(new AxeBuilder(desk.page()).analyze().getViolations().stream()
                .map(found -> found.getId() + ": " + found.getNodes().getFirst().getHtml()).toList())
                .as(name).isEmpty();
    }

    private static ShopTablet twice(ShopTablet tablet, String pin) {
        return tablet.enter(pin).shows("The same PIN again").enter(pin);
    }

    private static void state(ShopTablet tablet, ZonedDateTime done) {
        long daysAgo = ChronoUnit.DAYS.between(done.toLocalDate(), LocalDate.ofInstant(
                server.bean(ShopClock.class).now().wall(), ZoneId.systemDefault()));
        tablet.press("It was done before").shows("On which day was it done?").look("day");
        tablet.press(daysAgo == 0 ? "Today" : "Yesterday").shows("At what time was it done?").look("time")
                .enter(done.format(DateTimeFormatter.ofPattern("HHmm")))
                .shows("Why is it entered late?").look("why").press("Tablet was out of order");
        tablet.page().getByText("You state:").waitFor();
        tablet.look("state").enter(DemoPerson.ILKA_FERROW.pin());
    }

    private static TravellerId lot() {
        KitId kit = new KitId("K-95" + String.format("%02d", ++kits));
        List<Lots.Lot> lots = List.of(new Lots.Lot("HDF-9500-01", "Brace", 2, new HeatId("H-4471"), "TUBE"));
        server.bean(Lots.class).open(kit, "Late", Duration.ofDays(2), lots);
        return server.bean(Lots.class).release(kit, lots).getFirst();
    }

    private static Card card(TravellerId id) {
        return server.bean(Travellers.class).find(id).orElseThrow();
    }

    private static Signer ilka() {
        return server.bean(Authenticator.class).signing("paper", DemoPerson.ILKA_FERROW.badge(),
                DemoPerson.ILKA_FERROW.pin()) instanceof Recognition.Recognised(Signer signer) ? signer : null;
    }

    private static List<String> codes(Outcome.Refused<?> refused) {
        return refused.refusals().stream().map(Refusal::code).toList();
    }
}

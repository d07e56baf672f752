package brightseam.ui.board;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.bins.shell.Bins;
import brightseam.browser.ShopServer;
import brightseam.demo.DemoPerson;
import brightseam.kernel.BadgeId;
import brightseam.kernel.BinId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.KitId;
import brightseam.ledger.Outcome;
import brightseam.people.Recognition;
import brightseam.people.Role;
import brightseam.people.Signer;
import brightseam.people.shell.Authenticator;
import brightseam.people.shell.People;
import brightseam.procedure.shell.ProcedureLibrary;
import brightseam.supply.shell.Supplies;
import brightseam.traveller.Disposition;
import brightseam.traveller.Guide;
import brightseam.traveller.NextAction;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.TravellerActions;
import brightseam.traveller.shell.Travellers;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Leads and administrators in a real browser on the demo shop. */
class BoardIT {

    @TempDir
    private static Path procedures;

    private static ShopServer shop;
    private static DeskBrowser bram;
    private static DeskBrowser oda;

    @BeforeAll
    static void open_the_demo_shop() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("procedures"))) {
            for (Path file : files.toList()) {
                Files.copy(file, procedures.resolve(file.getFileName()));
            }
        }
        shop = ShopServer.demo("--brightseam.procedures=" + procedures);
        bram = new DeskBrowser(shop, DemoPerson.BRAM_ODUYA);
        oda = new DeskBrowser(shop, DemoPerson.ODA_MARSH);
    }

    @AfterAll
    static void close_it() {
        bram.close();
        oda.close();
        shop.close();
    }

    @Test
    void the_board_says_what_was_signed_elsewhere_within_a_second() {
        bram.open("/board").look("board");
        Card card = anyToRead();
        NextAction.Read read = (NextAction.Read) card.next();
        String row = "[data-traveller='" + card.id() + "']";
        assertThat(bram.page().locator(row)).containsText(read.step().title() + " not signed");
        Actor ilka = new Actor(DemoPerson.ILKA_FERROW.badge(), "bench-1");
        Card now = card;
        while (now.next() instanceof NextAction.Read next) {
            done(shop.bean(TravellerActions.class).takeReading(ilka, List.of(card.id()), next.step().id(),
                    next.reading().id(), next.reading().limits().minimum().orElse(BigDecimal.ONE)));
            now = again(card);
        }
        done(shop.bean(TravellerActions.class).signStep(
                ilka, List.of(card.id()), read.step().id(), signer(DemoPerson.ILKA_FERROW)));
        String next = MissingWords.shortly(again(card), shop.bean(
                brightseam.kernel.shell.ShopClock.class).now()).getFirst();
        bram.page().waitForFunction("([row, words]) => document.querySelector(row).innerText.includes(words)",
                List.of(row, next), new Page.WaitForFunctionOptions().setTimeout(1_000));
    }

    @Test
    void the_board_can_be_narrowed_and_leads_to_travellers_and_kits() {
        bram.open("/board");
        int all = bram.page().locator(".board-row").count();
        bram.choose("Every kit", "K-0043");
        assertThat(bram.page().locator(".board-row")).hasCount(7);
        assertThat(all).isGreaterThan(7);
        bram.page().locator(".board-row").first().click(new com.microsoft.playwright.Locator.ClickOptions()
                .setPosition(600, 20));
        bram.page().waitForURL("**/board/traveller/**");
        bram.shows("Where it stands").look("traveller");
        bram.open("/board/kit/K-0043").shows("Can it go in?").look("kit");
        assertThat(bram.page().locator("[data-kit='K-0043']")).containsText("Held up by");
    }

    @Test
    void a_list_with_an_error_releases_nothing_and_the_corrected_one_does() {
        String header = "part_number,description,drawing_revision,quantity,procedure,heat\n";
        bram.open("/release").look("release-start");
        bram.fill("Kit label", "K-0091").fill("Title", "Lander 9, spare legs").press("Open this kit")
                .hears("Opened");
        bram.fill("Parts list as CSV", header + "HDF-9100-01,Spare leg,A,two,TUBE,\nHDF-9100-02,=1+1,A,1,TUBE,\n")
                .press("Check the list and add it").hears("List not used");
        assertThat(bram.page().locator("table").first()).containsText("two");
        bram.look("release-problems");
        assertThat(shop.bean(Travellers.class).ofKit(new KitId("K-0091"))).isEmpty();
        bram.page().locator("vaadin-upload input[type=file]").setInputFiles(new FilePayload("list.csv", "text/csv",
                (header + "HDF-9100-01,Spare leg,A,2,TUBE," + tubeHeat() + "\n").getBytes(StandardCharsets.UTF_8)));
        bram.hears("Added").shows("HDF-9100-01 rev A");
        bram.press("Release the lines that have a heat").hears("Released").look("released");
        List<Card> released = shop.bean(Travellers.class).ofKit(new KitId("K-0091"));
        assertThat(released).extracting(card -> card.traveller().pieces()).containsExactly(List.of(1, 2));
        assertThat(pdf(bram, "Print traveller labels")).startsWith("%PDF-");
        bram.open("/board/kit/K-0091").shows("HDF-9100-01").shows("Cannot go in yet");
    }

    @Test
    void a_lead_sends_a_rejected_lot_back_for_rework() {
        Card stopped = shop.bean(Travellers.class).notEnded().stream().filter(card -> card.traveller().isInQuarantine())
                .filter(card -> !card.procedure().step(card.traveller().openNonconformances().getFirst().step())
                        .reworkTo().isEmpty()).findFirst().orElseThrow();
        bram.open("/board/traveller/" + stopped.id()).shows("Decide and sign").look("quarantine");
        bram.picks("rework").fill("Reason (goes into the record)", "Pickle it again, shorter.")
                .fill("Your PIN", "111999").press("Decide and sign").hears("Not recognised");
        bram.fill("Your PIN", DemoPerson.BRAM_ODUYA.pin()).press("Decide and sign").hears("Return not allowed");
        bram.choose("Rework goes back to step", stopped.procedure().step(Guide.returns(stopped.traveller(),
                stopped.procedure(), stopped.traveller().openNonconformances().getFirst()).getFirst()).title());
        bram.fill("Your PIN", DemoPerson.BRAM_ODUYA.pin()).press("Decide and sign").hears("Decided");
        assertThat(again(stopped).traveller().nonconformances()).anyMatch(nc -> nc.decision()
                .filter(how -> how.disposition() == Disposition.REWORK).isPresent());
    }

    @Test
    void a_procedure_is_approved_as_shown_and_a_bad_file_changes_nothing() throws IOException {
        Path file = procedures.resolve("tube.yaml");
        String text = Files.readString(file);
        Files.writeString(file, text.replaceFirst("revision: C", "revision: D"));
        bram.open("/shop/procedures").press("Read the folder again").shows("waits for approval").look("procedures");
        bram.page().getByText("TUBE rev D").first().click();
        bram.shows("Content hash").look("procedure");
        bram.fill("Your PIN", DemoPerson.BRAM_ODUYA.pin()).press("Approve TUBE rev D as Bram Oduya")
                .hears("Approved");
        assertThat(shop.bean(ProcedureLibrary.class).current("TUBE").orElseThrow().ref().revision()).isEqualTo("D");
        Files.writeString(file, text.replaceFirst("revision: C", "revision: E")
                .replaceFirst("kind: soak", "kind: bath"));
        bram.open("/shop/procedures").press("Read the folder again").shows("tube.yaml: nothing of this file is used")
                .shows("The last approved revision stays in use: TUBE rev D").look("procedure-problems");
        assertThat(shop.bean(ProcedureLibrary.class).current("TUBE").orElseThrow().ref().revision()).isEqualTo("D");
    }

    @Test
    void bins_stations_and_heats_are_registered_and_their_labels_printed() {
        bram.open("/shop").look("shop");
        bram.open("/shop/bins").fill("First label", "B-0991").fill("How many, numbered on", "3").press("Register")
                .hears("Registered").look("bins");
        assertThat(shop.bean(Bins.class).find(new BinId("B-0993"))).isPresent();
        bram.press("Retire B-0993").press("Retire B-0993 for good").hears("Retired").shows("retired");
        bram.fill("First label", "B-0991").fill("How many, numbered on", "1").press("Register").hears("Label in use");
        bram.open("/shop/stations").press("Take out of use S-SAW-1").fill("Reason", "blade changed")
                .press("Take out of use S-SAW-1, with this reason").hears("Out of use").look("stations");
        bram.press("Put back into use").hears("Put back");
        bram.open("/shop/heats").fill("Label", "H-9Z0001").fill("Grade", "9").fill("Form", "tube")
                .fill("Dimensions", "38.1 x 1.65 mm").fill("Maker", "Norrfall Titan").fill("Certificate number", "C-77")
                .press("Register").hears("Registered").look("heats");
        bram.open("/shop/labels").press("All of them").shows("A4 sheets").look("labels");
        assertThat(pdf(bram, "A4 sheets: ten to a sheet")).startsWith("%PDF-");
    }

    @Test
    void supplies_are_registered_and_what_must_not_be_used_is_said_in_words() {
        bram.open("/shop/supplies").shows("CONTAMINATED: Brushed a carbon steel fixture")
                .shows("NOT CALIBRATED since").look("supplies");
        bram.fill("Label", "G-0115").fill("Title", "Acetone, 1 litre bottle").fill("Lot or serial number", "OA-7801")
                .fill("Maker", "Ostrand Chemicals (invented)").fill("Last day", "next year").press("Register")
                .shows("choose one");
        bram.page().locator("vaadin-select").first().click();
        bram.page().locator("vaadin-select-item").getByText("solvent: Acetone, reagent grade").click();
        bram.press("Register").shows("year, month and day");
        bram.fill("Last day", "2031-12-31").press("Register").hears("Registered").look("supply-registered");
        bram.press("Declare clean G-0305").fill("Reason", "New bristles")
                .press("Declare clean G-0305, with this reason").hears("Declared clean");
        assertThat(shop.bean(Supplies.class).find(new SupplyId("G-0305")).orElseThrow().state().contamination())
                .isEmpty();
    }

    @Test
    void an_administrator_keeps_people_and_stamps() {
        oda.open("/shop/people").fill("Badge", "P-0107").fill("Name", "Mirja Tolv")
                .fill("First PIN, 4 to 8 digits", "1234");
        oda.page().getByLabel("inspector").check();
        oda.press("Register").hears("Too easy").look("people");
        oda.open("/shop/people/P-0107").fill("First PIN, 4 to 8 digits", "907146").press("Set first PIN")
                .hears("First PIN set").shows("to choose another one");
        oda.fill("Stamp number", "BS-07").press("Issue stamp").hears("Stamp in use");
        oda.fill("Stamp number", "BS-31").press("Issue stamp").hears("Issued")
                .shows("Holds stamp BS-31").look("person");
        assertThat(shop.bean(People.class).find(new BadgeId("P-0107")).orElseThrow().holds(Role.INSPECTOR)).isTrue();
        oda.press("Deactivate Mirja Tolv").fill("Reason", "left the shop")
                .press("Deactivate Mirja Tolv, with this reason").hears("Deactivated").shows("closed for good");
        oda.open("/board").shows("Travellers");
    }

    private static Card anyToRead() {
        return shop.bean(Travellers.class).notEnded().stream()
                .filter(card -> card.next() instanceof NextAction.Read read && read.step().station().equals("saw"))
                .findFirst().orElseThrow();
    }

    private static Card again(Card card) {
        return shop.bean(Travellers.class).find(card.id()).orElseThrow();
    }

    private static Signer signer(DemoPerson who) {
        return shop.bean(Authenticator.class).signing("bench-1", who.badge(), who.pin())
                instanceof Recognition.Recognised recognised ? recognised.signer() : null;
    }

    private static void done(Outcome<?> outcome) {
        assertThat(outcome).isInstanceOf(Outcome.Done.class);
    }

    private static String tubeHeat() {
        return shop.bean(brightseam.material.shell.Heats.class).all().stream()
                .filter(heat -> heat.form().equals("tube") && !heat.isOnHold() && heat.grade().equals("9"))
                .findFirst().orElseThrow().id().value();
    }

    private static String pdf(DeskBrowser desk, String link) {
        String href = desk.page().getByText(link).first().evaluate("link => link.href").toString();
        byte[] content = desk.page().request().get(href).body();
        return new String(content, 0, Math.min(5, content.length), StandardCharsets.US_ASCII);
    }
}

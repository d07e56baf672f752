package brightseam.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.demo.DemoPerson;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.traveller.TravellerEvent;
import brightseam.traveller.shell.RecordedEvent;
import brightseam.traveller.shell.Travellers;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;

/** The people, tablets and prints of {@link WholeJobIT}, and how its tests look at them. */
abstract class WholeJob {

    static final StepId REVIEW = new StepId("record-review");
    static final int LABEL_DPI = 200;

    @TempDir
    static Path films;

    static Shift shift;
    static ShopTablet bram;
    static ShopTablet ilka;
    static ShopTablet sanna;
    static Fabricator fabricator;
    static BoardWatch board;
    static TravellerId lot;
    static BufferedImage label;

    @BeforeAll
    static void three_people_sign_in() {
        shift = new Shift();
        bram = shift.tablet(DemoPerson.BRAM_ODUYA, "job-lead");
        ilka = shift.tablet(DemoPerson.ILKA_FERROW, "job-bench");
        sanna = shift.tablet(DemoPerson.SANNA_VEIT, "job-stamp");
        fabricator = new Fabricator(ilka, DemoPerson.ILKA_FERROW.pin(), shift.emptyBins(),
                shift.supplies(), shift::pass);
        board = new BoardWatch(bram);
    }

    @AfterAll
    static void they_go_home() {
        System.out.println("From the press on one tablet to the line on the lead's board:\n" + board.measured());
        Stream.of(bram, ilka, sanna).forEach(ShopTablet::close);
        shift.close();
    }

    static ShopServer server() {
        return shift.server();
    }

    static <E extends TravellerEvent> List<E> events(Class<E> type) {
        return server().bean(Travellers.class).record(lot).stream().map(RecordedEvent::event)
                .filter(type::isInstance).map(type::cast).toList();
    }

    static void link(String words) {
        assertThat(ilka.page().locator("shop-link")).containsText(words,
                new LocatorAssertions.ContainsTextOptions().setTimeout(15_000));
    }

    /** The digits go on falling. */
    static void assertRunsOn(ShopTablet tablet) {
        tablet.page().locator(".work-card .hold-digits").waitFor();
        String before = tablet.page().locator(".work-card .hold-digits").innerText();
        tablet.page().waitForFunction("""
                before => {
                  const seconds = text => text.split(':').reduce((minutes, rest) => 60 * minutes + +rest, 0);
                  return seconds(document.querySelector('.work-card .hold-digits').innerText) < seconds(before);
                }""", before, new Page.WaitForFunctionOptions().setTimeout(5_000));
    }

    static void pressWithPin(ShopTablet tablet, Locator form, String pin, String words) {
        form.getByLabel("Your PIN").fill(pin);
        form.getByLabel("Your PIN").blur();
        tablet.push(words);
    }

    static void told(ShopTablet tablet, String word) {
        assertThat(tablet.page().locator("shop-verdict .verdict-word")).hasText(word);
    }

    static BufferedImage firstPage(byte[] pdf, int dpi) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFRenderer(document).renderImageWithDPI(0, dpi, ImageType.RGB);
        }
    }

    static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("[\\s\u00a0]+", " ");
        }
    }
}

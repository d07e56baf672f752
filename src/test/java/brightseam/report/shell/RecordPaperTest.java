package brightseam.report.shell;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.Moment;
import brightseam.report.RecordMark;
import brightseam.report.Told;
import brightseam.report.TravellerDocument;
import brightseam.scan.AimingFrame;
import brightseam.scan.FrameReading;
import brightseam.scan.shell.FrameReader;
import brightseam.traveller.Stories;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class RecordPaperTest {

    private static final Moment NOW = new Moment(Instant.parse("2031-03-05T12:00:00Z"), 90_000_000);
    private static final String HOSTILE = "</p><img src=\"http://example.invalid/x.png\"/><script>1</script> &amp;"
            + " \u0000<object type=\"brightseam/data-matrix\" data-payload=\"x\"/> ≤ 5 µm at 20 °C – thumb";

    private static byte[] print(TravellerDocument told) {
        return new RecordPaper(told, ZoneOffset.UTC, "Local codes rule.").print(NOW, "Ida Quell");
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("[\\s\u00a0]+", " ");
        }
    }

    @Test
    void the_print_says_who_did_what_when_on_what_authority_and_what_went_wrong() throws IOException {
        byte[] pdf = print(Told.of(Stories.troubled("bare thumb")));
        Files.write(Files.createDirectories(Path.of("target/prints")).resolve("troubled.pdf"), pdf);
        assertThat(text(pdf))
                .contains("T-1042", "LF-210, drawing revision C", "H-9T3381: grade 9 tube", "SM-20441 of Skerry Metals")
                .contains("by Ada Roem (P-0003)", "5e5e5e")
                .contains("Held 4 min 20 s, over the maximum (1 min to 3 min)")
                .contains("Gap since step 50 pickle: 1 min 35 s of at most 1 min: NOT KEPT.")
                .contains("42 °C – OUT", "32.5 °C 35.2 °C", "(P-0001): mistyped")
                .contains("Ida Quell · stamp Q-03", "inspected and accepted as inspector", "badge and PIN")
                .contains("SUPERSEDED", "Disposition: rework, back to step 30 degrease", "Touched: bare thumb.")
                .contains("put in bin", "is a clean bin", "every hash was derived anew");
    }

    @Test
    void the_print_shows_the_chamber_with_locks_gear_joints_evidence_charts_and_verdicts() throws IOException {
        byte[] pdf = print(Told.inTheChamber(Stories.inTheChamber()));
        Files.write(Files.createDirectories(Path.of("target/prints")).resolve("chamber.pdf"), pdf);
        assertThat(text(pdf))
                .contains("In the chamber", "Session CS-0012: passed in")
                .contains("Lock pass 1, in, session CS-0012 at S-LOCK-1")
                .contains("oxygen meter G-0701 SN 4471 calibrated until 30 Sep 2031", "argon cylinder A-0031 AR 90-117")
                .contains("Joint K-07.J03, run 1", "Oxygen during the arc, meter G-0701: highest 21.5 ppm",
                        "while it cooled, meter G-0701: highest 18.5 ppm, mean over time 12.1 ppm, limit 30.0 ppm")
                .contains("ABOVE IT for 4.0 s (6.0 to 10.0 s, 48.0 ppm after the arc began)")
                .contains("SHA-256 of the readings abababababababab…", "gap in the readings, longest")
                .contains("Accepted: colour light straw", "REJECTED: colour dark blue; undercut 0.2 mm",
                        "photographs: J03 root (cdcdcdcdcdcdcdcd…)")
                .contains("oxygen over its limit at a joint", "joint rejected");
        assertThat(text(print(Told.of(Stories.closed())))).doesNotContain("In the chamber");
    }

    @Test
    void a_chart_is_drawn_on_the_page_in_black_and_white() throws IOException {
        try (PDDocument document = Loader.loadPDF(print(Told.inTheChamber(Stories.inTheChamber())))) {
            int charts = 0;
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                BufferedImage seen = new PDFRenderer(document).renderImageWithDPI(page, 100, ImageType.RGB);
                ImageIO.write(seen, "png", Path.of("target/prints/chamber-" + page + ".png").toFile());
                charts += longestLine(seen) > seen.getWidth() * 0.5 ? 1 : 0;
                assertThat(isGrey(seen)).as("page " + page).isTrue();
            }
            assertThat(charts).as("pages on which a limit runs across").isPositive();
        }
    }

    private static int longestLine(BufferedImage image) {
        int longest = 0;
        for (int y = image.getHeight() / 8; y < image.getHeight() * 7 / 8; y++) {
            int run = 0;
            for (int x = 0; x < image.getWidth(); x++) {
                run = (image.getRGB(x, y) & 0xff) < 128 ? run + 1 : 0;
                longest = Math.max(longest, run);
            }
        }
        return longest;
    }

    private static boolean isGrey(BufferedImage image) {
        for (int y = 0; y < image.getHeight(); y += 3) {
            for (int x = 0; x < image.getWidth(); x += 3) {
                int rgb = image.getRGB(x, y);
                int red = rgb >> 16 & 0xff;
                if (Math.abs(red - (rgb >> 8 & 0xff)) > 4 || Math.abs(red - (rgb & 0xff)) > 4) {
                    return false;
                }
            }
        }
        return true;
    }

    @Test
    void joints_go_out_as_lines_that_a_spreadsheet_takes() {
        List<String> lines = JointCsv.write(Told.inTheChamber(Stories.inTheChamber())).lines().toList();
        assertThat(lines).hasSize(6);
        int columns = lines.getFirst().split(",").length;
        assertThat(lines.get(1)).startsWith("T-1042,K-07.J03,1,during the arc,CS-0012,S-CHAMBER-1,1 2,1,P-0001,ERTi-2,")
                .contains(",G-0701,30.0,21.5,16.0,0.0,0,0,yes,no,", ",accepted,light straw,");
        assertThat(lines.get(3).split(",", -1)).hasSize(columns);
        assertThat(lines.get(4)).contains(",rejected,dark blue,\"Workshop specification HDF-W-3, revision 2\",");
    }

    @Test
    void a_closed_lot_under_suspicion_says_so_at_its_head_with_the_reason_and_who_says_it() throws IOException {
        assertThat(text(print(Told.of(Stories.suspectAt("pickle", "Fill 3 proved bad")))))
                .contains("Now: closed, in quarantine, SUSPECT")
                .contains("Fill 3 proved bad", "put it under suspicion", "Ada Roem");
        assertThat(text(print(Told.of(Stories.closed())))).doesNotContain("SUSPECT");
    }

    @Test
    void every_page_carries_the_label_the_hash_and_its_number() throws IOException {
        TravellerDocument told = Told.of(Stories.troubled("bare thumb"));
        try (PDDocument document = Loader.loadPDF(print(told))) {
            int pages = document.getNumberOfPages();
            assertThat(pages).isGreaterThan(2);
            for (int page = 1; page <= pages; page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                assertThat(stripper.getText(document)).contains("Traveller T-1042", told.chain().lastHash(),
                        "Page " + page + " of " + pages).doesNotContain("DEMO");
            }
        }
    }

    @Test
    void what_people_wrote_is_text_and_loads_nothing() throws IOException {
        byte[] pdf = print(Told.of(Stories.troubled(HOSTILE)));
        assertThat(text(pdf)).contains("</p><img src=\"http://example.invalid/x.png\"/><script>1</script> &amp; □")
                .contains("≤ 5 µm at 20 °C – thumb");
    }

    @Test
    void a_reader_reads_the_record_mark_back_from_the_rendered_page() throws IOException {
        TravellerDocument told = Told.of(Stories.closed());
        try (PDDocument document = Loader.loadPDF(print(told))) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 150, ImageType.RGB);
            BufferedImage corner = page.getSubimage(page.getWidth() * 3 / 5, 0, page.getWidth() * 2 / 5,
                    page.getHeight() / 4);
            assertThat(RecordMark.read(read(corner))).contains(told.recordMark());
        }
    }

    private static String read(BufferedImage image) {
        return new FrameReader().read(image, AimingFrame.whole()) instanceof FrameReading.Seen seen
                ? seen.scan().data() : "nothing was seen";
    }
}

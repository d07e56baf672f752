package brightseam.scan.shell;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.scan.AimingFrame;
import brightseam.scan.FrameReading;
import brightseam.scan.Label;
import brightseam.scan.LabelKind;
import brightseam.scan.LabelSymbol;
import brightseam.scan.OwnLabel;
import brightseam.scan.ScanParser;
import brightseam.scan.ScanReading;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** Every label that is printed reads back as what it was printed for. */
class PrintedLabelsTest {

    private static final float DOTS_PER_INCH = 150;
    private static final List<Label> LABELS = Stream.of(
            new OwnLabel(LabelKind.BIN, "B-0142"), new OwnLabel(LabelKind.TRAVELLER, "T-1042"),
            new OwnLabel(LabelKind.HEAT, "H-9T3381"), new OwnLabel(LabelKind.BADGE, "P-0007"),
            new OwnLabel(LabelKind.STATION, "S-ACID-1"), new OwnLabel(LabelKind.KIT, "K-07"),
            new OwnLabel(LabelKind.BIN, "B-1"), new OwnLabel(LabelKind.TRAVELLER, "T-1042.2-A"),
            new OwnLabel(LabelKind.STATION, "S-ABCDEFGHIJ-KLMNOPQRSTU"))
            .map(own -> new Label(own, "Clean bin", List.of("Up to 40 \u00B0C, \u2264 0.5 \u00B5m", "\u6C34"), true))
            .toList();

    @Test
    void every_page_of_a_label_reads_back_by_camera() throws IOException {
        List<ScanReading> read = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(new LabelPrinter().pages(LABELS))) {
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                read.add(read(new PDFRenderer(document).renderImageWithDPI(page, DOTS_PER_INCH, ImageType.GRAY)));
            }
        }
        assertThat(read).isEqualTo(LABELS.stream().map(Label::own).toList());
    }

    @Test
    void every_label_of_a_sheet_reads_back_by_camera() throws IOException {
        List<ScanReading> read = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(new LabelPrinter().sheets(LABELS))) {
            BufferedImage sheet = new PDFRenderer(document).renderImageWithDPI(0, DOTS_PER_INCH, ImageType.GRAY);
            double pixelsPerMillimetre = DOTS_PER_INCH / 25.4;
            for (int i = 0; i < LABELS.size(); i++) {
                int x = (int) ((5 + i % 2 * 100) * pixelsPerMillimetre);
                int y = (int) ((13.5 + i / 2 * 54) * pixelsPerMillimetre);
                int wide = (int) (85 * pixelsPerMillimetre);
                read.add(read(sheet.getSubimage(x, y, wide, (int) (50 * pixelsPerMillimetre))));
            }
        }
        assertThat(read).isEqualTo(LABELS.stream().map(Label::own).toList());
    }

    @Test
    void eleven_labels_take_two_sheets() throws IOException {
        List<Label> eleven = Stream.generate(() -> LABELS.getFirst()).limit(11).toList();

        try (PDDocument document = Loader.loadPDF(new LabelPrinter().sheets(eleven))) {
            assertThat(document.getNumberOfPages()).isEqualTo(2);
        }
    }

    @Test
    void both_symbologies_read_back_from_the_picture_of_a_label() {
        for (LabelSymbol symbol : LabelSymbol.values()) {
            for (Label label : LABELS) {
                assertThat(read(new LabelImage().of(label, symbol, 6))).as(symbol + " " + label.own())
                        .isEqualTo(label.own());
            }
        }
    }

    @Test
    void a_label_says_in_words_what_it_is_and_that_it_is_a_demo() throws IOException {
        Label shop = new Label(
                new OwnLabel(LabelKind.BIN, "B-0142"), "Clean bin", List.of("\u2264 40 \u00B0C \u6C34"), false);
        Label demo = new Label(shop.own(), shop.title(), shop.lines(), true);

        assertThat(text(demo)).contains("BIN", "CLEAN BIN", "B-0142", "4", "\u2264 40 \u00B0C ?", "DEMO");
        assertThat(text(shop)).contains("CLEAN BIN").doesNotContain("DEMO");
    }

    @Test
    void a_label_on_a_card_has_the_size_of_a_card() throws IOException {
        try (PDDocument document = Loader.loadPDF(new LabelPrinter().pages(List.of(LABELS.get(3))))) {
            assertThat(document.getPage(0).getMediaBox().getWidth() / 72 * 25.4).isBetween(85.5, 85.7);
        }
    }

    private static String text(Label label) throws IOException {
        try (PDDocument document = Loader.loadPDF(new LabelPrinter().pages(List.of(label)))) {
            return new PDFTextStripper().getText(document);
        }
    }

    private static ScanReading read(BufferedImage image) {
        FrameReading seen = new FrameReader().read(image, AimingFrame.whole());
        assertThat(seen).isInstanceOf(FrameReading.Seen.class);
        return ScanParser.standard().parse(((FrameReading.Seen) seen).scan(), LocalDate.of(2026, 1, 15));
    }
}

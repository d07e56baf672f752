package brightseam.scan.shell;

import brightseam.scan.Label;
import brightseam.scan.LabelSymbol;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.springframework.stereotype.Component;

/** Prints labels as PDF: one to a page of its own size for a label printer, or ten to a sheet of A4. */
@Component
public class LabelPrinter {

    private static final float A4_WIDTH_MILLIMETRES = 210;
    private static final float A4_HEIGHT_MILLIMETRES = 297;
    private static final int COLUMNS = 2;
    private static final int ROWS = 5;
    private static final float CELL_WIDTH_MILLIMETRES = 100;
    private static final float CELL_HEIGHT_MILLIMETRES = 54;

    /**
     * One page per label, of the label's size: 100 by 50 mm, badges of a card's size.
     *
     * @throws IllegalArgumentException where {@code labels} is empty
     */
    public byte[] pages(List<Label> labels) {
        return pages(labels, LabelImage.SYMBOL);
    }

    static byte[] pages(List<Label> labels, LabelSymbol symbol) {
        return document(labels, (document, font) -> {
            for (Label label : labels) {
                LabelSize size = LabelSize.of(label.own().kind());
                PDPage page = new PDPage(new PDRectangle(size.widthPoints(), size.heightPoints()));
                document.addPage(page);
                try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
                    new LabelDrawing(stream, font, 0, size.heightPoints(), size).draw(label, symbol);
                }
            }
        });
    }

    /**
     * Sheets of A4 with ten labels each, in two columns, with thin lines to cut along.
     *
     * @throws IllegalArgumentException where {@code labels} is empty
     */
    public byte[] sheets(List<Label> labels) {
        int perSheet = COLUMNS * ROWS;
        return document(labels, (document, font) -> {
            for (int first = 0; first < labels.size(); first += perSheet) {
                sheet(document, font, labels.subList(first, Math.min(first + perSheet, labels.size())));
            }
        });
    }

    private static void sheet(PDDocument document, LabelFont font, List<Label> labels) throws IOException {
        PDPage page = new PDPage(PDRectangle.A4);
        document.addPage(page);
        float left = (A4_WIDTH_MILLIMETRES - COLUMNS * CELL_WIDTH_MILLIMETRES) / 2;
        float top = A4_HEIGHT_MILLIMETRES - (A4_HEIGHT_MILLIMETRES - ROWS * CELL_HEIGHT_MILLIMETRES) / 2;
        try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
            for (int i = 0; i < labels.size(); i++) {
                LabelSize size = LabelSize.of(labels.get(i).own().kind());
                float x = (left + i % COLUMNS * CELL_WIDTH_MILLIMETRES) * LabelSize.POINTS_PER_MILLIMETRE;
                float y = (top - i / COLUMNS * CELL_HEIGHT_MILLIMETRES) * LabelSize.POINTS_PER_MILLIMETRE;
                new LabelDrawing(stream, font, x, y, size).draw(labels.get(i), LabelImage.SYMBOL);
                stream.setLineWidth(0.25f);
                stream.addRect(x, y - size.heightPoints(), size.widthPoints(), size.heightPoints());
                stream.stroke();
            }
        }
    }

    private static byte[] document(List<Label> labels, Drawing drawing) {
        if (labels.isEmpty()) {
            throw new IllegalArgumentException("at least one label");
        }
        try (PDDocument document = new PDDocument(); ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            document.getDocumentInformation().setTitle("Brightseam labels");
            drawing.draw(document, LabelFont.in(document));
            document.save(out);
            return out.toByteArray();
        } catch (IOException lost) {
            throw new UncheckedIOException(lost);
        }
    }

    private interface Drawing {
        void draw(PDDocument document, LabelFont font) throws IOException;
    }
}

package brightseam.scan.shell;

import brightseam.scan.LabelSymbol;
import com.google.zxing.common.BitMatrix;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.springframework.stereotype.Component;

/** Prints a notice for the wall, A4: a heading, a text as QR code, which any telephone reads, and lines. */
@Component
public class NoticePrinter {

    private static final LabelSymbol SYMBOL = LabelSymbol.QR;
    private static final int MODULE_PIXELS = 4;
    private static final float POINTS = LabelSize.POINTS_PER_MILLIMETRE;
    private static final float MARGIN = 20 * POINTS;
    private static final float SYMBOL_SIDE = 80 * POINTS;
    private static final float HEADING_POINTS = 26;
    private static final float LINE_POINTS = 12;
    private static final float LINE_STEP = 18;

    /**
     * The sheet as PDF.
     *
     * @param heading in large letters
     * @param code what the symbol says
     * @param lines under the symbol, each on one line, made smaller where it is too long
     * @throws IllegalArgumentException where {@code code} is longer than a symbol holds
     */
    public byte[] sheet(String heading, String code, List<String> lines) {
        try (PDDocument document = new PDDocument(); ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            document.getDocumentInformation().setTitle(heading);
            PDPage page = new PDPage(PDRectangle.A4);
            document.addPage(page);
            try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
                draw(stream, LabelFont.in(document), heading, code, lines);
            }
            document.save(out);
            return out.toByteArray();
        } catch (IOException lost) {
            throw new UncheckedIOException(lost);
        }
    }

    /** The symbol alone as SVG, read aloud as {@code words}; both texts are our own, {@code words} without quotes. */
    public static String svg(String code, String words) {
        int quietZone = Symbols.quietZoneModules(SYMBOL);
        BitMatrix modules = Symbols.modules(code, SYMBOL);
        int side = SymbolBars.side(modules, quietZone);
        StringBuilder path = new StringBuilder();
        SymbolBars.each(modules, quietZone, (left, top, width) ->
                path.append("M%d %dh%dv1h-%dz".formatted(left, top, width, width)));
        return ("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" width=\"%d\" height=\"%d\""
                + " role=\"img\" aria-label=\"%s\"><rect width=\"%d\" height=\"%d\" fill=\"#fff\"/>"
                + "<path d=\"%s\" fill=\"#000\"/></svg>")
                .formatted(side, side, side * MODULE_PIXELS, side * MODULE_PIXELS, words, side, side, path);
    }

    private static void draw(PDPageContentStream page, LabelFont font, String heading, String code,
            List<String> lines) throws IOException {
        float width = PDRectangle.A4.getWidth() - 2 * MARGIN;
        float top = PDRectangle.A4.getHeight() - MARGIN;
        text(page, font, heading, top - HEADING_POINTS, HEADING_POINTS, width);
        float symbolTop = top - 2 * HEADING_POINTS;
        int quietZone = Symbols.quietZoneModules(SYMBOL);
        BitMatrix modules = Symbols.modules(code, SYMBOL);
        float module = SYMBOL_SIDE / SymbolBars.side(modules, quietZone);
        SymbolBars.each(modules, quietZone, (left, row, bar) -> page.addRect(
                MARGIN + left * module, symbolTop - (row + 1) * module, bar * module, module));
        page.fill();
        float baseline = symbolTop - SYMBOL_SIDE - LINE_STEP;
        for (String line : lines) {
            text(page, font, line, baseline, LINE_POINTS, width);
            baseline -= LINE_STEP;
        }
    }

    private static void text(PDPageContentStream page, LabelFont font, String raw, float baseline, float points,
            float width) throws IOException {
        String shown = font.shown(raw);
        page.beginText();
        page.setFont(font.font(), font.fittingPoints(shown, points, width));
        page.newLineAtOffset(MARGIN, baseline);
        page.showText(shown);
        page.endText();
    }
}

package brightseam.scan.shell;

import brightseam.scan.Label;
import brightseam.scan.LabelSymbol;
import com.google.zxing.common.BitMatrix;
import java.io.IOException;
import java.util.Locale;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;

/**
 * Draws one label: the symbol on the left, what people read on the right. Black on white only, so that it prints on
 * any printer and tells by word and shape.
 */
final class LabelDrawing {

    private static final float MARGIN_MILLIMETRES = 3;
    private static final float SYMBOL_WIDTH_FRACTION_MAX = 0.46f;
    private static final float POINTS = LabelSize.POINTS_PER_MILLIMETRE;

    private final PDPageContentStream page;
    private final LabelFont font;
    private final float leftPoints;
    private final float topPoints;
    private final LabelSize size;

    /** Draws on {@code page} a label of {@code size} whose upper left corner lies there, in points. */
    LabelDrawing(PDPageContentStream page, LabelFont font, float leftPoints, float topPoints, LabelSize size) {
        this.page = page;
        this.font = font;
        this.leftPoints = leftPoints;
        this.topPoints = topPoints;
        this.size = size;
    }

    void draw(Label label, LabelSymbol symbol) throws IOException {
        float side = Math.min(size.heightMillimetres() - 2 * MARGIN_MILLIMETRES,
                size.widthMillimetres() * SYMBOL_WIDTH_FRACTION_MAX);
        symbol(Symbols.modules(label.own().payload(), symbol), Symbols.quietZoneModules(symbol), side);
        float left = side + 2 * MARGIN_MILLIMETRES;
        float width = size.widthMillimetres() - left - MARGIN_MILLIMETRES;
        text(label.own().kind().name(), left, 7, 4.2f, width, false);
        text(label.title().toUpperCase(Locale.ROOT), left, 15, 7, width, true);
        identity(label, left, 26, width);
        float below = 32;
        for (String line : label.lines()) {
            text(line, left, below, 3.6f, width, false);
            below += 4.2f;
        }
        if (label.demo()) {
            demoMark(left + width);
        }
    }

    /** The symbol with its quiet zone in a square of {@code side} millimetres; runs of modules as one bar each. */
    private void symbol(BitMatrix modules, int quietZone, float side) throws IOException {
        float module = side / SymbolBars.side(modules, quietZone);
        SymbolBars.each(modules, quietZone, (left, top, width) -> box(MARGIN_MILLIMETRES + left * module,
                MARGIN_MILLIMETRES + top * module, width * module, module));
        page.fill();
    }

    /** The identity, and beside it, framed, its check character. */
    private void identity(Label label, float left, float baseline, float width) throws IOException {
        float frame = 9;
        float available = width - frame - 2;
        float wide = text(label.own().id(), left, baseline, 9.5f, available, true);
        float frameLeft = left + wide + 2;
        page.setLineWidth(0.5f * POINTS);
        page.addRect(x(frameLeft), y(baseline + 1.6f), frame * POINTS, 10 * POINTS);
        page.stroke();
        text(String.valueOf(label.own().check()), frameLeft + 1.6f, baseline, 9.5f, frame, true);
    }

    private void demoMark(float right) throws IOException {
        float wide = 17;
        float bottom = size.heightMillimetres() - 1.5f;
        box(right - wide, bottom - 5.5f, wide, 5.5f);
        page.fill();
        page.setNonStrokingColor(1f);
        page.setStrokingColor(1f);
        text("DEMO", right - wide + 2.5f, bottom - 1.2f, 4.4f, wide - 3, false);
        page.setNonStrokingColor(0f);
        page.setStrokingColor(0f);
    }

    /** Writes {@code raw} at most {@code width} wide and returns how wide it is, all in millimetres. */
    private float text(String raw, float left, float baseline, float height, float width, boolean bold)
            throws IOException {
        String shown = font.shown(raw);
        float points = font.fittingPoints(shown, height * POINTS, width * POINTS);
        page.beginText();
        page.setFont(font.font(), points);
        page.setRenderingMode(bold ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
        page.setLineWidth(points * 0.035f);
        page.newLineAtOffset(x(left), y(baseline));
        page.showText(shown);
        page.endText();
        return font.widthPoints(shown, points) / POINTS;
    }

    private void box(float left, float top, float width, float height) throws IOException {
        page.addRect(x(left), y(top + height), width * POINTS, height * POINTS);
    }

    private float x(float millimetres) {
        return leftPoints + millimetres * POINTS;
    }

    private float y(float millimetres) {
        return topPoints - millimetres * POINTS;
    }
}

package brightseam.ui.parts;

import java.util.List;
import java.util.Locale;

/**
 * Writes SVG: black on white, stripes instead of colours, no ids, no outside references. Texts are escaped.
 *
 * <p>Coordinates are drawing units, one CSS pixel at full size.
 */
final class Pen {

    private static final String FONT = "font-family=\"'DejaVu Sans','Liberation Sans',sans-serif\"";
    private static final double STRIPE = 7;
    /** Drawing units a letter of size 16 takes at most, about. */
    private static final double WIDTH = 9.5;
    private static final double BOLD_WIDTH = 10.5;

    private final StringBuilder svg = new StringBuilder();

    /** Opens a drawing that is read aloud as {@code words}. */
    Pen(int width, int height, String words) {
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" width=\"%d\" height=\"%d\""
                .formatted(width, height, width, height));
        svg.append(" role=\"img\" aria-label=\"").append(escaped(words)).append("\" ").append(FONT).append('>');
    }

    Pen box(double x, double y, double width, double height, String fill) {
        return draw("<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"%s\" stroke=\"#000\""
                + " stroke-width=\"2\"/>", x, y, Math.max(0, width), height, fill);
    }

    /** Fills a box with upright stripes, which print and fax as they are. */
    Pen stripes(double x, double y, double width, double height) {
        for (double from = x; from < x + width; from += 2 * STRIPE) {
            draw("<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"#000\"/>",
                    from, y, Math.min(STRIPE, x + width - from), height);
        }
        return this;
    }

    Pen line(double x1, double y1, double x2, double y2, double thick, boolean dashed) {
        return draw("<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"#000\" stroke-width=\"%.1f\"%s/>",
                x1, y1, x2, y2, thick, dashed ? " stroke-dasharray=\"8 5\"" : "");
    }

    /** A diamond standing on its point at {@code x}, {@code y}. */
    Pen diamond(double x, double y, double half, String fill) {
        return draw("<path d=\"M%.1f %.1fl%.1f %.1f %.1f %.1f %.1f %.1fz\" fill=\"%s\" stroke=\"#000\""
                + " stroke-width=\"3\"/>", x, y - half, half, half, -half, half, -half, -half, fill);
    }

    /** Text of {@code size}; {@code anchor} is start, middle or end. */
    Pen text(double x, double y, int size, String anchor, boolean bold, String words) {
        return draw("<text x=\"%.1f\" y=\"%.1f\" font-size=\"%d\" text-anchor=\"%s\" font-weight=\"%s\">%s</text>",
                x, y, size, anchor, bold ? "bold" : "normal", escaped(words));
    }

    /** Text beside a line at {@code x}: to its right, or to its left where the right end is near. */
    Pen label(double x, double y, double right, boolean bold, String words) {
        boolean fits = x + 8 + words.length() * WIDTH < right;
        return text(fits ? x + 8 : x - 8, y, 16, fits ? "start" : "end", bold, words);
    }

    /** A bold label beside {@code x} that none of the upright {@code lines} crosses: right, else left, else beyond. */
    Pen clearLabel(double x, double y, List<Double> lines, String words) {
        double length = 14 + words.length() * BOLD_WIDTH;
        if (lines.stream().noneMatch(line -> line >= x && line < x + length)) {
            return text(x + 8, y, 16, "start", true, words);
        }
        if (x > length && lines.stream().noneMatch(line -> line <= x && line > x - length)) {
            return text(x - 8, y, 16, "end", true, words);
        }
        return text(lines.stream().reduce(x, Math::max) + 8, y, 16, "start", true, words);
    }

    /** The finished drawing. */
    String done() {
        return svg + "</svg>";
    }

    private Pen draw(String form, Object... values) {
        svg.append(String.format(Locale.ROOT, form, values));
        return this;
    }

    private static String escaped(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}

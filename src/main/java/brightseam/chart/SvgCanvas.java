package brightseam.chart;

import java.util.Locale;

/** Writes one {@code <svg>} element: no scripts, no outside references, no ids; texts are escaped. */
public final class SvgCanvas implements Canvas {

    private static final String FONT = "font-family=\"'DejaVu Sans','Liberation Sans',sans-serif\"";
    private static final double TENTH = 10;

    private final StringBuilder svg = new StringBuilder(4096);

    /** Opens a drawing that is read aloud as {@code words}. */
    public SvgCanvas(int width, int height, String words) {
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ").append(width).append(' ').append(height)
                .append("\" width=\"").append(width).append("\" height=\"").append(height)
                .append("\" role=\"img\" aria-label=\"").append(escaped(words)).append("\" ").append(FONT).append('>');
    }

    @Override
    public void path(double[] xs, double[] ys, double thick, Stroke stroke) {
        points(xs, ys);
        svg.append("\" fill=\"none\" stroke=\"#000\" stroke-width=\"");
        number(thick);
        svg.append("\" stroke-linejoin=\"round\"").append(switch (stroke) {
            case SOLID -> "";
            case DASHED -> " stroke-dasharray=\"9 6\"";
            case DOTTED -> " stroke-dasharray=\"2 5\"";
        }).append("/>");
    }

    @Override
    public void area(double[] xs, double[] ys, Shade fill, double edge) {
        points(xs, ys);
        svg.append("z\" fill=\"").append(colour(fill)).append('"');
        if (edge > 0) {
            svg.append(" stroke=\"#000\" stroke-width=\"");
            number(edge);
            svg.append('"');
        }
        svg.append("/>");
    }

    @Override
    public void circle(double x, double y, double radius, boolean filled) {
        svg.append(String.format(Locale.ROOT, "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"%.1f\" fill=\"%s\" stroke=\"#000\""
                + " stroke-width=\"2\"/>", x, y, radius, filled ? "#000" : "#fff"));
    }

    @Override
    public void text(double x, double y, int size, Anchor anchor, boolean bold, String words) {
        svg.append(String.format(Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\" font-size=\"%d\" text-anchor=\"%s\"%s>",
                        x, y, size, anchor.name().toLowerCase(Locale.ROOT), bold ? " font-weight=\"bold\"" : ""))
                .append(escaped(words)).append("</text>");
    }

    /** The finished drawing. */
    public String done() {
        return svg + "</svg>";
    }

    private void points(double[] xs, double[] ys) {
        svg.append("<path d=\"M");
        for (int i = 0; i < xs.length; i++) {
            if (i > 0) {
                svg.append(i == 1 ? "L" : " ");
            }
            number(xs[i]);
            svg.append(' ');
            number(ys[i]);
        }
    }

    /** With one decimal at most: a tenth of a unit is less than anybody sees, and a day's chart has thousands. */
    private void number(double value) {
        long tenths = Math.round(value * TENTH);
        if (tenths < 0) {
            svg.append('-');
        }
        long size = Math.abs(tenths);
        svg.append(size / 10);
        if (size % 10 != 0) {
            svg.append('.').append(size % 10);
        }
    }

    private static String colour(Shade shade) {
        return switch (shade) {
            case NONE -> "none";
            case WHITE -> "#fff";
            case LIGHT -> "#ddd";
            case MIDDLE -> "#999";
            case BLACK -> "#000";
        };
    }

    private static String escaped(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}

package brightseam.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;

/** Draws with a printer's pen, such as that of a page of PDF. The pen's own scale is left as it is found. */
public final class PaperCanvas implements Canvas {

    private static final float[] DASHES = {9, 6};
    private static final float[] DOTS = {2, 5};

    private final Graphics2D pen;

    /** Draws with {@code pen}. */
    public PaperCanvas(Graphics2D pen) {
        this.pen = pen;
    }

    @Override
    public void path(double[] xs, double[] ys, double thick, Stroke stroke) {
        pen.setColor(Color.BLACK);
        pen.setStroke(switch (stroke) {
            case SOLID -> solid(thick);
            case DASHED -> dashed(thick, DASHES);
            case DOTTED -> dashed(thick, DOTS);
        });
        pen.draw(outline(xs, ys, false));
    }

    @Override
    public void area(double[] xs, double[] ys, Shade fill, double edge) {
        Path2D outline = outline(xs, ys, true);
        if (fill != Shade.NONE) {
            pen.setColor(colour(fill));
            pen.fill(outline);
        }
        if (edge > 0) {
            pen.setColor(Color.BLACK);
            pen.setStroke(solid(edge));
            pen.draw(outline);
        }
    }

    @Override
    public void circle(double x, double y, double radius, boolean filled) {
        Ellipse2D circle = new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
        pen.setColor(filled ? Color.BLACK : Color.WHITE);
        pen.fill(circle);
        pen.setColor(Color.BLACK);
        pen.setStroke(solid(2));
        pen.draw(circle);
    }

    @Override
    public void text(double x, double y, int size, Anchor anchor, boolean bold, String words) {
        pen.setColor(Color.BLACK);
        pen.setFont(new Font(Font.SANS_SERIF, bold ? Font.BOLD : Font.PLAIN, size));
        double width = pen.getFontMetrics().stringWidth(words);
        double left = switch (anchor) {
            case START -> x;
            case MIDDLE -> x - width / 2;
            case END -> x - width;
        };
        pen.drawString(words, (float) left, (float) y);
    }

    private static Path2D outline(double[] xs, double[] ys, boolean closed) {
        Path2D outline = new Path2D.Double();
        for (int i = 0; i < xs.length; i++) {
            if (i == 0) {
                outline.moveTo(xs[i], ys[i]);
            } else {
                outline.lineTo(xs[i], ys[i]);
            }
        }
        if (closed) {
            outline.closePath();
        }
        return outline;
    }

    private static BasicStroke solid(double thick) {
        return new BasicStroke((float) thick, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }

    private static BasicStroke dashed(double thick, float[] pattern) {
        return new BasicStroke((float) thick, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, pattern, 0);
    }

    private static Color colour(Shade shade) {
        return switch (shade) {
            case NONE -> new Color(0, 0, 0, 0);
            case WHITE -> Color.WHITE;
            case LIGHT -> new Color(0xdd, 0xdd, 0xdd);
            case MIDDLE -> new Color(0x99, 0x99, 0x99);
            case BLACK -> Color.BLACK;
        };
    }
}

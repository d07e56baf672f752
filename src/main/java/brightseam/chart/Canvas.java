package brightseam.chart;

/**
 * What a drawing is drawn on: a screen or a sheet of paper. Black on white, greys, hatching instead of colours.
 *
 * <p>Coordinates are drawing units from the upper left, one CSS pixel at full size.
 */
public interface Canvas {

    /** How a line is drawn. */
    enum Stroke { SOLID, DASHED, DOTTED }

    /** What an area is filled with. */
    enum Shade { NONE, WHITE, LIGHT, MIDDLE, BLACK }

    /** A shape that marks a point. */
    enum Shape { DISC, RING, SQUARE, DIAMOND, TRIANGLE, CROSS }

    /** Which end of a text stands at its place. */
    enum Anchor { START, MIDDLE, END }

    /** An open line through {@code xs} and {@code ys}. */
    void path(double[] xs, double[] ys, double thick, Stroke stroke);

    /** A closed area with corners at {@code xs} and {@code ys}, edged where {@code edge} is above zero. */
    void area(double[] xs, double[] ys, Shade fill, double edge);

    /** A circle round {@code x}, {@code y}, black or white with a black edge. */
    void circle(double x, double y, double radius, boolean filled);

    /** One line of text of {@code size} on the base line {@code y}. */
    void text(double x, double y, int size, Anchor anchor, boolean bold, String words);

    /** A straight line. */
    default void line(double x1, double y1, double x2, double y2, double thick, Stroke stroke) {
        path(new double[] {x1, x2}, new double[] {y1, y2}, thick, stroke);
    }

    /** An upright box. */
    default void box(double x, double y, double width, double height, Shade fill, double edge) {
        area(new double[] {x, x + width, x + width, x}, new double[] {y, y, y + height, y + height}, fill, edge);
    }

    /** A shape of half width {@code half} round {@code x}, {@code y}; told apart by its outline alone. */
    default void mark(double x, double y, double half, Shape shape) {
        switch (shape) {
            case DISC, RING -> circle(x, y, half, shape == Shape.DISC);
            case SQUARE -> box(x - half, y - half, 2 * half, 2 * half, Shade.WHITE, 2);
            case DIAMOND -> area(new double[] {x, x + half, x, x - half}, new double[] {y - half, y, y + half, y},
                    Shade.WHITE, 2);
            case TRIANGLE -> area(new double[] {x, x + half, x - half},
                    new double[] {y - half, y + half, y + half}, Shade.WHITE, 2);
            case CROSS -> {
                line(x - half, y - half, x + half, y + half, 2.5, Stroke.SOLID);
                line(x - half, y + half, x + half, y - half, 2.5, Stroke.SOLID);
            }
        }
    }

    /** Slanted lines all over a box, {@code apart} units apart along its foot. */
    default void hatch(double x, double y, double width, double height, double apart) {
        for (double foot = x + apart / 2; foot < x + width + height; foot += apart) {
            double left = Math.max(x, foot - height);
            double right = Math.min(x + width, foot);
            if (right > left) {
                line(left, y + height - (foot - left), right, y + height - (foot - right), 1, Stroke.SOLID);
            }
        }
    }
}

package brightseam.demo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;

/**
 * Draws a welded ladder frame for the demo's weld maps: two legs that lean together, cross tubes between them, a lug
 * under each leg. Lines only, so that it prints in black and white.
 */
final class FrameDrawing {

    private static final int WIDTH = 1_200;
    private static final int HEIGHT = 900;
    private static final int THOUSANDTHS = 1_000;
    private static final double LEG_RADIUS = 27;
    private static final double CROSS_RADIUS = 18;
    private static final double TOP = 80;
    private static final double FOOT = 680;
    private static final double TOP_HALF_WIDTH = 210;
    private static final double FOOT_HALF_WIDTH = 380;
    private static final double MIDDLE = 600;
    private static final Color INK = new Color(0x1c1a17);
    private static final Color FAINT = new Color(0x8a857c);

    private final String title;
    private final int crossTubes;
    private final boolean lugs;

    /** A frame named {@code title} with 1 to 5 cross tubes, with lugs or without. */
    FrameDrawing(String title, int crossTubes, boolean lugs) {
        if (crossTubes < 1 || crossTubes > 5) {
            throw new IllegalArgumentException("cross tubes: 1 to 5");
        }
        this.title = title;
        this.crossTubes = crossTubes;
        this.lugs = lugs;
    }

    /** Where cross tube {@code cross} (from 0 at the top) meets the left or the right leg, in thousandths. */
    int[] joint(int cross, boolean left) {
        double y = height(cross);
        return spot(left ? leftEdge(y) : 2 * MIDDLE - leftEdge(y), y);
    }

    /** Where the lug meets the left or the right leg, in thousandths. */
    int[] lug(boolean left) {
        return spot(MIDDLE + (left ? -1 : 1) * FOOT_HALF_WIDTH, FOOT);
    }

    /** The drawing as PNG. */
    byte[] png() {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, WIDTH, HEIGHT);
        draw(pen);
        pen.dispose();
        try (ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            ImageIO.write(image, "png", bytes);
            return bytes.toByteArray();
        } catch (IOException impossible) {
            throw new UncheckedIOException("into memory", impossible);
        }
    }

    private void draw(Graphics2D pen) {
        Line2D left = new Line2D.Double(MIDDLE - TOP_HALF_WIDTH, TOP, MIDDLE - FOOT_HALF_WIDTH, FOOT);
        Line2D right = new Line2D.Double(MIDDLE + TOP_HALF_WIDTH, TOP, MIDDLE + FOOT_HALF_WIDTH, FOOT);
        List<Line2D> crosses = new ArrayList<>();
        for (int cross = 0; cross < crossTubes; cross++) {
            double y = height(cross);
            crosses.add(new Line2D.Double(legX(y), y, 2 * MIDDLE - legX(y), y));
        }
        crosses.forEach(cross -> tube(pen, cross, CROSS_RADIUS));
        tube(pen, left, LEG_RADIUS);
        tube(pen, right, LEG_RADIUS);
        if (lugs) {
            lug(pen, left.getP2());
            lug(pen, right.getP2());
        }
        words(pen);
    }

    /** Outline, axis and the two cut ends of a tube. */
    private static void tube(Graphics2D pen, Line2D axis, double radius) {
        AffineTransform before = pen.getTransform();
        double length = axis.getP1().distance(axis.getP2());
        pen.translate(axis.getX1(), axis.getY1());
        pen.rotate(Math.atan2(axis.getY2() - axis.getY1(), axis.getX2() - axis.getX1()));
        Area body = new Area(new Rectangle2D.Double(0, -radius, length, 2 * radius));
        body.add(new Area(end(length, radius)));
        outlined(pen, body);
        outlined(pen, end(0, radius));
        pen.setColor(FAINT);
        pen.setStroke(new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1,
                new float[] {22, 6, 4, 6}, 0));
        pen.draw(new Line2D.Double(-14, 0, length + 14, 0));
        pen.setTransform(before);
    }

    private static Ellipse2D end(double at, double radius) {
        double flat = radius / 3;
        return new Ellipse2D.Double(at - flat, -radius, 2 * flat, 2 * radius);
    }

    /** A plate with a hole for a shackle. */
    private static void lug(Graphics2D pen, Point2D foot) {
        Path2D plate = new Path2D.Double();
        plate.moveTo(foot.getX() - 46, foot.getY());
        plate.lineTo(foot.getX() + 46, foot.getY());
        plate.lineTo(foot.getX() + 30, foot.getY() + 62);
        plate.quadTo(foot.getX(), foot.getY() + 96, foot.getX() - 30, foot.getY() + 62);
        plate.closePath();
        outlined(pen, plate);
        outlined(pen, new Ellipse2D.Double(foot.getX() - 15, foot.getY() + 36, 30, 30));
    }

    private static void outlined(Graphics2D pen, Shape shape) {
        pen.setColor(Color.WHITE);
        pen.fill(shape);
        pen.setColor(INK);
        pen.setStroke(new BasicStroke(3));
        pen.draw(shape);
    }

    private void words(Graphics2D pen) {
        pen.setColor(INK);
        pen.setStroke(new BasicStroke(2));
        pen.draw(new Rectangle2D.Double(20, 20, WIDTH - 40.0, HEIGHT - 40.0));
        pen.setFont(new Font(Font.SANS_SERIF, Font.BOLD, 26));
        pen.drawString(title, 44, HEIGHT - 74);
        pen.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 20));
        pen.drawString("Halcyon Deep Frames. Invented, not to scale.", 44, HEIGHT - 44);
    }

    private double height(int cross) {
        double share = (cross + 0.5) / crossTubes;
        return TOP + share * (FOOT - TOP);
    }

    private static double legX(double y) {
        double share = (y - TOP) / (FOOT - TOP);
        return MIDDLE - TOP_HALF_WIDTH - share * (FOOT_HALF_WIDTH - TOP_HALF_WIDTH);
    }

    private static double leftEdge(double y) {
        return legX(y) + LEG_RADIUS;
    }

    private static int[] spot(double x, double y) {
        return new int[] {
            (int) Math.round(THOUSANDTHS * x / WIDTH), (int) Math.round(THOUSANDTHS * y / HEIGHT)};
    }
}

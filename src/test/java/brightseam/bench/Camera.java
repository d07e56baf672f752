package brightseam.bench;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Random;
import javax.imageio.ImageIO;

/**
 * A pinhole camera of 1280 by 720 pixels and 66 degrees across (invented, like a tablet's), of which the aiming frame
 * keeps the middle 400 by 400 pixels. Every picture follows from the seed.
 */
public final class Camera {

    /** Side of the aiming frame, in pixels. */
    public static final int SIDE = 400;

    private static final double FOCAL_PIXELS = 640 / Math.tan(Math.toRadians(33));
    private static final int SAMPLES = 3;

    private final BufferedImage label;
    private final double pixelsPerMillimetre;
    private final double aimX;
    private final double aimY;

    /**
     * @param label in grey, drawn finely
     * @param pixelsPerMillimetre of {@code label}
     * @param aimX where the person aims, in millimetres from the label's left edge
     * @param aimY and from its top
     */
    public Camera(BufferedImage label, double pixelsPerMillimetre, double aimX, double aimY) {
        this.label = label;
        this.pixelsPerMillimetre = pixelsPerMillimetre;
        this.aimX = aimX;
        this.aimY = aimY;
    }

    /** One picture as JPEG, as the page sends it. */
    public byte[] jpeg(Shot shot, Random random) {
        double[] light = expose(shot, random);
        light = Spoil.blur(light, SIDE, shot.blurPixels());
        light = Spoil.smear(light, SIDE, shot.motionPixels(), random.nextDouble() * Math.PI);
        Spoil.glare(light, SIDE, shot.glare(), random);
        BufferedImage image = new BufferedImage(SIDE, SIDE, BufferedImage.TYPE_BYTE_GRAY);
        byte[] pixels = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = (byte) Math.clamp(Math.round(light[i] + random.nextGaussian() * shot.noise()), 0, 255);
        }
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            ImageIO.write(image, "jpeg", out);
            return out.toByteArray();
        } catch (IOException lost) {
            throw new UncheckedIOException(lost);
        }
    }

    private double[] expose(Shot shot, Random random) {
        double[][] axes = axes(shot, random);
        double[] across = axes[0];
        double[] down = axes[1];
        double[] normal = axes[2];
        double offset = shot.distanceMillimetres() / FOCAL_PIXELS * 25;
        double[] centre = {(random.nextDouble() - 0.5) * 2 * offset, (random.nextDouble() - 0.5) * 2 * offset,
            shot.distanceMillimetres()};
        double reach = dot(normal, centre);
        double slope = (random.nextDouble() - 0.5) * 0.3 / SIDE;
        double bench = 70 + random.nextInt(80);
        double[] light = new double[SIDE * SIDE];
        for (int y = 0; y < SIDE; y++) {
            for (int x = 0; x < SIDE; x++) {
                double sum = 0;
                for (int s = 0; s < SAMPLES * SAMPLES; s++) {
                    double[] ray = {x + (s % SAMPLES + 0.5) / SAMPLES - SIDE / 2.0,
                        y + (s / SAMPLES + 0.5) / SAMPLES - SIDE / 2.0, FOCAL_PIXELS};
                    double scale = reach / dot(normal, ray);
                    double[] from = {
                        ray[0] * scale - centre[0], ray[1] * scale - centre[1], ray[2] * scale - centre[2]};
                    double grey = grey(dot(from, across) + aimX, dot(from, down) + aimY);
                    sum += grey < 0 ? bench + (x * 7 + y * 3) % 23 : shot.ink() + (shot.paper() - shot.ink()) * grey;
                }
                light[y * SIDE + x] = sum / (SAMPLES * SAMPLES) * (1 + slope * (x - SIDE / 2.0));
            }
        }
        return light;
    }

    /** The label's own directions in the camera's space: across, down, and away from the camera. */
    private static double[][] axes(Shot shot, Random random) {
        double roll = Math.toRadians((random.nextDouble() - 0.5) * (shot.rolls() ? 360 : 10));
        double tilt = Math.toRadians(shot.tiltDegrees() * (0.7 + 0.3 * random.nextDouble()));
        double side = random.nextDouble() * 2 * Math.PI;
        double[] towards = {Math.cos(side), Math.sin(side)};
        double[][] plain = {{Math.cos(roll), Math.sin(roll), 0}, {-Math.sin(roll), Math.cos(roll), 0}, {0, 0, 1}};
        double[][] leaned = new double[3][];
        for (int i = 0; i < 3; i++) {
            double along = plain[i][0] * towards[0] + plain[i][1] * towards[1];
            double depth = plain[i][2];
            double alongNow = along * Math.cos(tilt) - depth * Math.sin(tilt);
            double depthNow = along * Math.sin(tilt) + depth * Math.cos(tilt);
            leaned[i] = new double[] {plain[i][0] + (alongNow - along) * towards[0],
                plain[i][1] + (alongNow - along) * towards[1], depthNow};
        }
        return leaned;
    }

    /** How white the label is there, 0 to 1; below zero beside the label. */
    private double grey(double xMillimetres, double yMillimetres) {
        int x = (int) Math.floor(xMillimetres * pixelsPerMillimetre);
        int y = (int) Math.floor(yMillimetres * pixelsPerMillimetre);
        if (x < 0 || y < 0 || x >= label.getWidth() || y >= label.getHeight()) {
            return -1;
        }
        return label.getRaster().getSample(x, y, 0) / 255.0;
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }
}

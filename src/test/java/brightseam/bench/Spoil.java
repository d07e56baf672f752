package brightseam.bench;

import java.util.Random;

/** What lens, hand and lamp do to a square picture of grey values. */
final class Spoil {

    private Spoil() {}

    /** A Gaussian blur with standard deviation {@code sigma} pixels. */
    static double[] blur(double[] light, int side, double sigma) {
        if (sigma <= 0) {
            return light;
        }
        int reach = (int) Math.ceil(3 * sigma);
        double[] kernel = new double[2 * reach + 1];
        double total = 0;
        for (int i = -reach; i <= reach; i++) {
            kernel[i + reach] = Math.exp(-i * i / (2 * sigma * sigma));
            total += kernel[i + reach];
        }
        double[] rows = convolve(light, side, kernel, total, 1, 0);
        return convolve(rows, side, kernel, total, 0, 1);
    }

    private static double[] convolve(double[] light, int side, double[] kernel, double total, int dx, int dy) {
        int reach = kernel.length / 2;
        double[] out = new double[light.length];
        for (int y = 0; y < side; y++) {
            for (int x = 0; x < side; x++) {
                double sum = 0;
                for (int i = -reach; i <= reach; i++) {
                    sum += kernel[i + reach] * at(light, side, x + i * dx, y + i * dy);
                }
                out[y * side + x] = sum / total;
            }
        }
        return out;
    }

    /** A straight smear of {@code length} pixels in direction {@code angle}. */
    static double[] smear(double[] light, int side, double length, double angle) {
        if (length <= 0) {
            return light;
        }
        int steps = Math.max(2, (int) Math.ceil(length * 2));
        double[] out = new double[light.length];
        for (int y = 0; y < side; y++) {
            for (int x = 0; x < side; x++) {
                double sum = 0;
                for (int i = 0; i < steps; i++) {
                    double along = length * (i / (steps - 1.0) - 0.5);
                    sum += at(light, side, (int) Math.round(x + along * Math.cos(angle)),
                            (int) Math.round(y + along * Math.sin(angle)));
                }
                out[y * side + x] = sum / steps;
            }
        }
        return out;
    }

    /** A lamp's reflection: a soft bright ellipse within a quarter of the picture's side from the middle. */
    static void glare(double[] light, int side, double brightest, Random random) {
        double centreX = side * (0.5 + (random.nextDouble() - 0.5) * 0.5);
        double centreY = side * (0.5 + (random.nextDouble() - 0.5) * 0.5);
        double wide = side * (0.05 + 0.1 * random.nextDouble());
        double high = wide * (0.5 + random.nextDouble());
        for (int y = 0; y < side; y++) {
            for (int x = 0; x < side; x++) {
                double dx = (x - centreX) / wide;
                double dy = (y - centreY) / high;
                light[y * side + x] += brightest * Math.exp(-(dx * dx + dy * dy) / 2);
            }
        }
    }

    private static double at(double[] light, int side, int x, int y) {
        return light[Math.clamp(y, 0, side - 1) * side + Math.clamp(x, 0, side - 1)];
    }
}

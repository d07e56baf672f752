package brightseam.purge;

import java.util.function.BiFunction;

/** The classical fourth-order method, as a second way to every answer that the main code finds in closed form. */
final class RungeKutta {

    private RungeKutta() {}

    /** y(end) of y' = slope(t, y), from y(0) = start, in equal steps. */
    static double[] integrate(BiFunction<Double, double[], double[]> slope, double[] start, double end, int steps) {
        double h = end / steps;
        double[] y = start.clone();
        for (int step = 0; step < steps; step++) {
            double t = step * h;
            double[] k1 = slope.apply(t, y);
            double[] k2 = slope.apply(t + h / 2, plus(y, k1, h / 2));
            double[] k3 = slope.apply(t + h / 2, plus(y, k2, h / 2));
            double[] k4 = slope.apply(t + h, plus(y, k3, h));
            for (int i = 0; i < y.length; i++) {
                y[i] += h / 6 * (k1[i] + 2 * k2[i] + 2 * k3[i] + k4[i]);
            }
        }
        return y;
    }

    private static double[] plus(double[] y, double[] slope, double h) {
        double[] sum = y.clone();
        for (int i = 0; i < y.length; i++) {
            sum[i] += h * slope[i];
        }
        return sum;
    }
}

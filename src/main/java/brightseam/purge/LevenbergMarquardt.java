package brightseam.purge;

import java.util.function.UnaryOperator;

/**
 * Least squares by Levenberg and Marquardt's damping, with Marquardt's scaling and derivatives by differences.
 *
 * <p>Written here because the problems have three or four parameters and a library would be larger than the package.
 */
final class LevenbergMarquardt {

    private static final double DAMPING_START = 1e-3;
    private static final double DAMPING_MOST = 1e12;
    private static final double COST_TOLERANCE = 1e-9;

    private LevenbergMarquardt() {}

    /**
     * Where it came to.
     *
     * @param parameters at the least sum that was found
     * @param cost the sum of the squares there; infinite where nothing could be computed
     * @param normal J'J there
     */
    record Fit(double[] parameters, double cost, double[][] normal) {}

    static Fit minimise(UnaryOperator<double[]> residuals, double[] start, double[] steps, int iterations) {
        double[] best = start.clone();
        double[] at = residuals.apply(best);
        double cost = cost(at);
        double damping = DAMPING_START;
        double[][] jacobian = jacobian(residuals, best, at, steps);
        for (int i = 0; i < iterations && damping < DAMPING_MOST; i++) {
            double[] next = step(jacobian, at, best, damping);
            double[] there = next == null ? null : residuals.apply(next);
            double nextCost = there == null ? Double.POSITIVE_INFINITY : cost(there);
            if (nextCost < cost) {
                boolean settled = cost - nextCost <= COST_TOLERANCE * cost;
                best = next;
                at = there;
                cost = nextCost;
                damping = Math.max(damping / 5, 1e-12);
                jacobian = jacobian(residuals, best, at, steps);
                if (settled) {
                    break;
                }
            } else {
                damping *= 4;
            }
        }
        return new Fit(best, cost, normal(jacobian));
    }

    static double cost(double[] residuals) {
        double sum = 0;
        for (double residual : residuals) {
            sum += residual * residual;
        }
        return Double.isNaN(sum) ? Double.POSITIVE_INFINITY : sum;
    }

    private static double[] step(double[][] jacobian, double[] at, double[] parameters, double damping) {
        double[][] normal = normal(jacobian);
        double[] downhill = new double[parameters.length];
        for (int i = 0; i < parameters.length; i++) {
            for (int k = 0; k < at.length; k++) {
                downhill[i] -= jacobian[i][k] * at[k];
            }
            normal[i][i] = normal[i][i] * (1 + damping) + 1e-300;
        }
        double[][] lower = Matrix.cholesky(normal);
        if (lower == null) {
            return null;
        }
        double[] next = Matrix.solve(lower, downhill);
        for (int i = 0; i < next.length; i++) {
            next[i] += parameters[i];
        }
        return next;
    }

    /** One row for each parameter. */
    private static double[][] jacobian(
            UnaryOperator<double[]> residuals, double[] parameters, double[] at, double[] steps) {
        double[][] jacobian = new double[parameters.length][];
        for (int i = 0; i < parameters.length; i++) {
            double[] moved = parameters.clone();
            moved[i] += steps[i];
            double[] there = residuals.apply(moved);
            for (int k = 0; k < there.length; k++) {
                there[k] = (there[k] - at[k]) / steps[i];
            }
            jacobian[i] = there;
        }
        return jacobian;
    }

    private static double[][] normal(double[][] jacobian) {
        double[][] normal = new double[jacobian.length][jacobian.length];
        for (int i = 0; i < jacobian.length; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = 0;
                for (int k = 0; k < jacobian[i].length; k++) {
                    sum += jacobian[i][k] * jacobian[j][k];
                }
                normal[i][j] = sum;
                normal[j][i] = sum;
            }
        }
        return normal;
    }
}

package brightseam.demo.physics;

/**
 * Carries {@code x' = A x + b} over one fixed time exactly, whatever that time is: by the exponential of the matrix
 * {@code (A b; 0 0)}, made by halving the time until a Taylor series has converged, and squaring as often again.
 */
final class Propagator {

    /** Up to this norm the series of {@link #TERMS} terms is exact to the last digits: 0.5^16 / 16! is 7e-19. */
    private static final double NORM_MAX = 0.5;
    private static final int TERMS = 16;

    private final double[][] step;

    private Propagator(double[][] step) {
        this.step = step;
    }

    /** For {@code minutes} of the system {@code a}, {@code b}, whose rates are per minute. */
    static Propagator of(double[][] a, double[] b, double minutes) {
        int size = b.length;
        double[][] whole = new double[size + 1][size + 1];
        double norm = 0;
        for (int row = 0; row < size; row++) {
            double sum = 0;
            for (int column = 0; column < size; column++) {
                whole[row][column] = a[row][column] * minutes;
                sum += Math.abs(whole[row][column]);
            }
            whole[row][size] = b[row] * minutes;
            norm = Math.max(norm, sum);
        }
        int halvings = norm > NORM_MAX ? (int) Math.ceil(Math.log(norm / NORM_MAX) / Math.log(2)) : 0;
        double[][] result = series(scaled(whole, Math.pow(2, -halvings)));
        for (int square = 0; square < halvings; square++) {
            result = product(result, result);
        }
        return new Propagator(result);
    }

    /** The state after the step. */
    double[] after(double[] state) {
        int size = state.length;
        double[] next = new double[size];
        for (int row = 0; row < size; row++) {
            double sum = step[row][size];
            for (int column = 0; column < size; column++) {
                sum += step[row][column] * state[column];
            }
            next[row] = sum;
        }
        return next;
    }

    private static double[][] series(double[][] matrix) {
        int size = matrix.length;
        double[][] sum = new double[size][size];
        double[][] term = new double[size][size];
        for (int i = 0; i < size; i++) {
            sum[i][i] = 1;
            term[i][i] = 1;
        }
        for (int power = 1; power <= TERMS; power++) {
            term = scaled(product(term, matrix), 1.0 / power);
            for (int row = 0; row < size; row++) {
                for (int column = 0; column < size; column++) {
                    sum[row][column] += term[row][column];
                }
            }
        }
        return sum;
    }

    private static double[][] product(double[][] left, double[][] right) {
        int size = left.length;
        double[][] result = new double[size][size];
        for (int row = 0; row < size; row++) {
            for (int inner = 0; inner < size; inner++) {
                double factor = left[row][inner];
                if (factor != 0) {
                    for (int column = 0; column < size; column++) {
                        result[row][column] += factor * right[inner][column];
                    }
                }
            }
        }
        return result;
    }

    private static double[][] scaled(double[][] matrix, double factor) {
        double[][] result = new double[matrix.length][matrix.length];
        for (int row = 0; row < matrix.length; row++) {
            for (int column = 0; column < matrix.length; column++) {
                result[row][column] = matrix[row][column] * factor;
            }
        }
        return result;
    }
}

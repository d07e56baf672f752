package brightseam.purge;

/** The little linear algebra that this package needs, on small dense matrices. */
final class Matrix {

    /** Terms of the Taylor series; below a norm of 1/2 the rest after 16 is under 1e-19. */
    private static final int TERMS = 16;

    private Matrix() {}

    /** exp(a t), by halving until the norm is below 1/2, the Taylor series, and as many squarings. */
    static double[][] exponential(double[][] a, double t) {
        int halvings = 0;
        double scale = t;
        while (norm(a) * Math.abs(scale) > 0.5) {
            scale /= 2;
            halvings++;
        }
        double[][] sum = identity(a.length);
        double[][] term = identity(a.length);
        for (int k = 1; k <= TERMS; k++) {
            term = scaled(times(term, a), scale / k);
            for (int i = 0; i < a.length; i++) {
                for (int j = 0; j < a.length; j++) {
                    sum[i][j] += term[i][j];
                }
            }
        }
        for (int k = 0; k < halvings; k++) {
            sum = times(sum, sum);
        }
        return sum;
    }

    static double[] times(double[][] a, double[] x) {
        double[] product = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            for (int j = 0; j < x.length; j++) {
                product[i] += a[i][j] * x[j];
            }
        }
        return product;
    }

    static double[][] times(double[][] a, double[][] b) {
        double[][] product = new double[a.length][b[0].length];
        for (int i = 0; i < a.length; i++) {
            for (int k = 0; k < b.length; k++) {
                double factor = a[i][k];
                for (int j = 0; factor != 0 && j < b[0].length; j++) {
                    product[i][j] += factor * b[k][j];
                }
            }
        }
        return product;
    }

    /**
     * The lower triangle L with L L' = a, of a symmetric a.
     *
     * @return null where {@code a} is not positive definite
     */
    static double[][] cholesky(double[][] a) {
        double[][] lower = new double[a.length][a.length];
        for (int i = 0; i < a.length; i++) {
            for (int j = 0; j <= i; j++) {
                double rest = a[i][j];
                for (int k = 0; k < j; k++) {
                    rest -= lower[i][k] * lower[j][k];
                }
                if (i == j && !(rest > 0)) {
                    return null;
                }
                lower[i][j] = i == j ? Math.sqrt(rest) : rest / lower[j][j];
            }
        }
        return lower;
    }

    /** x with L L' x = b. */
    static double[] solve(double[][] lower, double[] b) {
        double[] x = b.clone();
        for (int i = 0; i < x.length; i++) {
            for (int k = 0; k < i; k++) {
                x[i] -= lower[i][k] * x[k];
            }
            x[i] /= lower[i][i];
        }
        return solveTransposed(lower, x);
    }

    /** x with L' x = b. */
    static double[] solveTransposed(double[][] lower, double[] b) {
        double[] x = b.clone();
        for (int i = x.length - 1; i >= 0; i--) {
            for (int k = i + 1; k < x.length; k++) {
                x[i] -= lower[k][i] * x[k];
            }
            x[i] /= lower[i][i];
        }
        return x;
    }

    private static double[][] identity(int size) {
        double[][] identity = new double[size][size];
        for (int i = 0; i < size; i++) {
            identity[i][i] = 1;
        }
        return identity;
    }

    private static double[][] scaled(double[][] a, double factor) {
        for (double[] row : a) {
            for (int j = 0; j < row.length; j++) {
                row[j] *= factor;
            }
        }
        return a;
    }

    private static double norm(double[][] a) {
        double most = 0;
        for (double[] row : a) {
            double sum = 0;
            for (double value : row) {
                sum += Math.abs(value);
            }
            most = Math.max(most, sum);
        }
        return most;
    }
}

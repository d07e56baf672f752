package brightseam.purge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** The small numerics below the models, against answers that are known in closed form. */
class NumericsTest {

    @Test
    void the_exponential_of_a_rotation_is_the_rotation() {
        double[][] quarter = Matrix.exponential(new double[][] {{0, -1}, {1, 0}}, Math.PI / 2);
        assertThat(quarter[0][0]).isCloseTo(0, within(1e-14));
        assertThat(quarter[0][1]).isCloseTo(-1, within(1e-14));
        assertThat(quarter[1][0]).isCloseTo(1, within(1e-14));
    }

    @Test
    void a_factored_matrix_solves_its_equations_and_one_that_is_not_positive_has_no_root() {
        double[][] lower = Matrix.cholesky(new double[][] {{4, 2, 1}, {2, 5, 3}, {1, 3, 6}});
        double[] x = Matrix.solve(lower, new double[] {4 + 4 + 3, 2 + 10 + 9, 1 + 6 + 18});
        assertThat(x).containsExactly(new double[] {1, 2, 3}, within(1e-12));
        assertThat(Matrix.cholesky(new double[][] {{1, 2}, {2, 1}})).isNull();
    }

    /** Rosenbrock's valley as a sum of squares: the least is at (1, 1), from the usual start (-1.2, 1). */
    @Test
    void least_squares_come_through_a_bent_valley() {
        UnaryOperator<double[]> valley = x -> new double[] {10 * (x[1] - x[0] * x[0]), 1 - x[0]};
        var fit = LevenbergMarquardt.minimise(valley, new double[] {-1.2, 1}, new double[] {1e-7, 1e-7}, 200);
        assertThat(fit.parameters()).containsExactly(new double[] {1, 1}, within(1e-5));
        assertThat(fit.cost()).isLessThan(1e-9);
    }

    @Test
    void what_cannot_be_computed_is_no_minimum() {
        UnaryOperator<double[]> undefined = x -> new double[] {Double.NaN};
        assertThat(LevenbergMarquardt.minimise(undefined, new double[] {1}, new double[] {1e-3}, 20).cost())
                .isInfinite();
    }

    @Test
    void the_meters_scale_is_undone_by_its_inverse_and_its_noise_is_one() {
        MeterTraits meter = new MeterTraits(0.1, 0.3, 0.02, 10, 1e6);
        for (double ppm : new double[] {-3, -0.1, 0, 0.2, 5, 40, 1000, 209_460}) {
            assertThat(meter.ppm(meter.scale(ppm))).isCloseTo(ppm, within(1e-9 * (1 + Math.abs(ppm))));
            double noise = Math.hypot(0.3, 0.02 * ppm);
            assertThat(meter.scale(ppm + noise / 100) - meter.scale(ppm)).isCloseTo(0.01, within(1e-4));
        }
    }

    /** The closed form of a lagging meter against numerical integration, equal rates included. */
    @Test
    void a_lagging_meter_follows_its_differential_equation() {
        Random random = new Random(3);
        for (int i = 0; i < 100; i++) {
            double rate = 0.05 + random.nextDouble();
            double lag = i % 5 == 0 ? 1 / rate : 0.05 + 3 * random.nextDouble();
            double level = 50 * random.nextDouble();
            double[] start = {1000 * random.nextDouble(), 1000 * random.nextDouble()};
            double minutes = 10 * random.nextDouble();
            double[] end = RungeKutta.integrate(
                    (t, y) -> new double[] {rate * (level - y[0]), (y[0] - y[1]) / lag}, start, minutes, 2000);
            assertThat(CurveModel.reading(start[0], start[1], level, rate, minutes, lag))
                    .isCloseTo(end[1], within(1e-4));
        }
    }
}

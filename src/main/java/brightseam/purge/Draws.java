package brightseam.purge;

import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;

/**
 * Chambers that the measured curve may be of, each with its weight: the doubt of a fit, in a form that any question can
 * be asked of.
 *
 * <p>The leak goes through its prior in equal steps of chance, as far as the fit's covariance leaves it; the other
 * parameters are drawn from the normal distribution that the covariance has for that leak; and each draw is weighed by
 * how well it fits in truth (importance sampling), because far from the best the curve does not bend as a covariance
 * has it. The same numbers are drawn each time, so that a forecast moves only when readings come in.
 *
 * <p>The prior of the leak is on the ppm b that it adds: one chamber in ten has none, and of the others the share 2/pi
 * arctan sqrt(b / 5 ppm) has less than b; half have less than 5 ppm, one in sixteen more than 500. This is a rough
 * belief (common practice), and the readings soon outweigh it.
 */
final class Draws {

    private static final int COUNT = 400;
    private static final long SEED = 18;
    private static final double LEAK_PPM_MIDDLE = 5;
    private static final double TIGHT_SHARE = 0.1;
    private static final double LEAK_SIGMAS = 4;
    private static final double PROPOSAL_WIDER = 1.15;
    /** With fewer that count, weights are noise, and the covariance alone is the better answer. */
    private static final double EFFECTIVE_MIN = 10;
    private static final double MINUTES_MOST = 1e5;

    private final Draw[] draws;

    /**
     * One chamber that may be.
     *
     * @param model with the flow at the end of the curve
     * @param chamberPpm at the end of the curve
     * @param readingPpm what the meter would show then
     */
    record Draw(MixingModel model, double chamberPpm, double readingPpm, double weight) {

        /** What the meter will show in {@code minutes}. */
        double readingAfter(double minutes, double lag) {
            if (model.ratePerMinute() == 0) {
                return CurveModel.reading(chamberPpm, readingPpm, chamberPpm, 0, minutes, lag);
            }
            return CurveModel.reading(chamberPpm, readingPpm, model.levelPpm(), model.ratePerMinute(), minutes, lag);
        }

        /** Where the chamber goes to; where it is, if nothing moves. */
        double chamberLevel() {
            return model.ratePerMinute() == 0 ? chamberPpm : model.levelPpm();
        }

        /** Until the meter shows {@code limitPpm} or less; infinite where it never does, or not in ten weeks. */
        double minutesTo(double limitPpm, double lag) {
            if (readingPpm <= limitPpm) {
                return 0;
            }
            if (chamberLevel() >= limitPpm) {
                return Double.POSITIVE_INFINITY;
            }
            double after = 1;
            while (after < MINUTES_MOST && readingAfter(after, lag) > limitPpm) {
                after *= 2;
            }
            double before = 0;
            while (after - before > 1e-3 && after < MINUTES_MOST) {
                double middle = (before + after) / 2;
                if (readingAfter(middle, lag) > limitPpm) {
                    before = middle;
                } else {
                    after = middle;
                }
            }
            return after < MINUTES_MOST ? after : Double.POSITIVE_INFINITY;
        }
    }

    private Draws(Draw[] draws) {
        this.draws = draws;
    }

    /**
     * Draws around the best fit.
     *
     * @param lower of the covariance, the leak first
     * @param residuals of the fit
     * @param toDraw makes a chamber of parameters; its weight is not looked at
     * @param leakBelief the logarithm of what else is believed of the leak's parameter, or empty for the prior alone
     */
    static Draws around(
            double[] best,
            double[][] lower,
            UnaryOperator<double[]> residuals,
            Function<double[], Draw> toDraw,
            Optional<DoubleUnaryOperator> leakBelief) {
        SplittableRandom random = new SplittableRandom(SEED);
        Leaks leaks = Leaks.within(best[0], lower[0][0], leakBelief.isPresent());
        double[] logarithms = new double[COUNT];
        Draw[] drawn = new Draw[COUNT];
        for (int i = 0; i < COUNT; i++) {
            double leak = leaks.parameter(i);
            double[] z = new double[best.length];
            z[0] = (leak - best[0]) / lower[0][0];
            double squares = 0;
            for (int j = 1; j < z.length; j++) {
                double drawnZ = random.nextGaussian();
                z[j] = PROPOSAL_WIDER * drawnZ;
                squares += drawnZ * drawnZ;
            }
            double[] parameters = Matrix.times(lower, z);
            for (int j = 0; j < z.length; j++) {
                parameters[j] += best[j];
            }
            logarithms[i] = squares / 2 - LevenbergMarquardt.cost(residuals.apply(parameters)) / 2
                    + leaks.logarithm(i) + belief(leak, leakBelief);
            drawn[i] = toDraw.apply(parameters);
        }
        return new Draws(weighed(drawn, logarithms));
    }

    /**
     * The leaks of the draws, in ppm that they add: first some with none at all, then through the prior.
     *
     * @param tight how many draws have none
     * @param from lowest of the others, as arctan sqrt(b / 5 ppm)
     * @param to highest of the others
     */
    private record Leaks(int tight, double from, double to) {

        static Leaks within(double best, double sigma, boolean believed) {
            double lowest = Math.max(0, best - LEAK_SIGMAS * sigma);
            double highest = Math.max(best + LEAK_SIGMAS * sigma,
                    LEAK_SIGMAS * sigma * sigma / Math.max(sigma, Math.abs(best)));
            return new Leaks(lowest > 0 || believed ? 0 : COUNT / 5,
                    Math.atan(Math.sqrt(lowest / LEAK_PPM_MIDDLE)), Math.atan(Math.sqrt(highest / LEAK_PPM_MIDDLE)));
        }

        double parameter(int draw) {
            if (draw < tight) {
                return 0;
            }
            double root = Math.tan(from + (to - from) * (draw - tight + 0.5) / (COUNT - tight));
            return LEAK_PPM_MIDDLE * root * root;
        }

        /** The logarithm of the prior's share that each draw stands for. */
        double logarithm(int draw) {
            return draw < tight
                    ? Math.log(TIGHT_SHARE / tight)
                    : Math.log((1 - TIGHT_SHARE) * (to - from) * 2 / Math.PI / (COUNT - tight));
        }
    }

    /** What is believed takes the place of the prior, in which the leaks were laid out. */
    private static double belief(double leak, Optional<DoubleUnaryOperator> leakBelief) {
        return leakBelief
                .map(belief -> belief.applyAsDouble(leak) + Math.log(Math.sqrt(leak) * (LEAK_PPM_MIDDLE + leak)))
                .orElse(0.0);
    }

    /** The middle and the band of 90 % of something that each draw has. */
    Estimate estimate(ToDoubleFunction<Draw> what) {
        double[] values = Arrays.stream(draws).mapToDouble(what).toArray();
        Integer[] order = new Integer[values.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, (one, other) -> Double.compare(values[one], values[other]));
        return new Estimate(quantile(0.5, values, order), quantile(0.05, values, order),
                quantile(0.95, values, order));
    }

    /** The value below which {@code share} of the weight lies. */
    private double quantile(double share, double[] values, Integer[] order) {
        double passed = 0;
        for (int index : order) {
            passed += draws[index].weight();
            if (passed >= share) {
                return values[index];
            }
        }
        return values[order[order.length - 1]];
    }

    /** The weight of those that are {@code so}. */
    double chance(Predicate<Draw> so) {
        return Math.min(1, Arrays.stream(draws).filter(so).mapToDouble(Draw::weight).sum());
    }

    private static Draw[] weighed(Draw[] drawn, double[] logarithms) {
        double most = Arrays.stream(logarithms).max().orElseThrow();
        double[] weights = new double[COUNT];
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < COUNT; i++) {
            double weight = Double.isFinite(most) ? Math.exp(logarithms[i] - most) : 1;
            weights[i] = weight;
            sum += weight;
            squares += weight * weight;
        }
        boolean usable = sum * sum / squares >= EFFECTIVE_MIN;
        for (int i = 0; i < COUNT; i++) {
            Draw draw = drawn[i];
            drawn[i] = new Draw(draw.model(), draw.chamberPpm(), draw.readingPpm(),
                    usable ? weights[i] / sum : 1.0 / COUNT);
        }
        return drawn;
    }
}

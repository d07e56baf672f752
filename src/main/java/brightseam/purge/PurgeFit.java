package brightseam.purge;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * Mixing efficiency and leak of a chamber, told from the curve that its meter shows while it is purged.
 *
 * <p>{@link MixingModel} and a meter with first-order lag are fitted by least squares (Levenberg and Marquardt) on the
 * scale on which the meter's noise is 1. Chamber and reading at the start are fitted too, because no purge starts well
 * mixed. Single wild readings lose weight (Huber). The covariance is the inverse of J'J, made larger where readings
 * scatter more than the meter should, or where what is left over hangs together in time. Bands come from draws, see
 * {@code Draws}. Priors: efficiency around 0.9, within a factor of two or so (common practice); the leak as in
 * {@code Draws}, or as expected.
 *
 * <p>One well mixed volume is the model. A blind cavity that breathes slowly, such as a tube whose end is nearly
 * closed, looks like a leak as long as it lasts, and forecasts are too late then.
 */
public final class PurgeFit {

    /** With fewer means than this nothing is fitted. */
    static final int POINTS_MIN = 10;

    private static final double EFFICIENCY_LIKELY = Math.log(0.9);
    private static final double EFFICIENCY_SPREAD = 0.6;
    /** How far the first reading may be off what the meter without noise would have shown, in units of noise. */
    private static final double FIRST_READING_SPREAD = 3;
    private static final double HUBER = 3;
    private static final int ITERATIONS = 40;
    private static final double MISFIT_MIN = 0.25;
    private static final double TOGETHER_MAX = 30;

    private final CurveModel model;
    private final Draws draws;
    private final double misfit;
    private final double endSeconds;

    private PurgeFit(CurveModel model, Draws draws, double misfit, double endSeconds) {
        this.model = model;
        this.draws = draws;
        this.misfit = misfit;
        this.endSeconds = endSeconds;
    }

    /**
     * The fit of {@code curve}.
     *
     * @param expected what is believed of the leak beforehand, if anything
     * @return empty where there are too few readings, or where they say nothing
     */
    public static Optional<PurgeFit> of(
            PurgeRun run, MeterTraits meter, MeasuredCurve curve, Optional<LeakExpected> expected) {
        FitPoints points = FitPoints.of(curve, meter);
        if (points.size() < POINTS_MIN) {
            return Optional.empty();
        }
        CurveModel model = new CurveModel(run, meter, points);
        Misfit misfit = new Misfit(model, points, run);
        LevenbergMarquardt.Fit fit = best(misfit, starts(run, meter, points, model));
        misfit.weigh(fit.parameters());
        fit = LevenbergMarquardt.minimise(misfit, fit.parameters(), steps(fit.parameters()), ITERATIONS);
        double factor = misfit.widen(fit.parameters());
        fit = LevenbergMarquardt.minimise(misfit, fit.parameters(), steps(fit.parameters()), ITERATIONS);
        double[][] lower = covarianceRoot(fit);
        if (lower == null || !Double.isFinite(fit.cost())) {
            return Optional.empty();
        }
        double endSeconds = points.startSeconds() + points.minutes()[points.size() - 1] * 60;
        double flow = run.flowLitresPerMinute(endSeconds);
        Draws draws = Draws.around(fit.parameters(), lower, misfit, parameters -> draw(run, model, flow, parameters),
                expected.map(leak -> belief(leak, model)));
        return Optional.of(new PurgeFit(model, draws, factor, endSeconds));
    }

    /** Share of the supply that mixes; above 1 where argon pushes the air out ahead of it, or the volume is less. */
    public Estimate efficiency() {
        return draws.estimate(draw -> draw.model().mixingEfficiency());
    }

    /** The leak in litres of air a minute, if the supply is as its certificate says. */
    public Estimate leakAirLitresPerMinute() {
        return draws.estimate(draw -> draw.model().leakAirLitresPerMinute());
    }

    /** The ppm where the curve goes to at the flow of its end. */
    public Estimate levelPpm() {
        return draws.estimate(Draws.Draw::chamberLevel);
    }

    /** What the meter shows at the end of the curve, without its noise. */
    public Estimate readingPpm() {
        return draws.estimate(Draws.Draw::readingPpm);
    }

    /**
     * How much more the readings scatter around the curve than the meter's noise explains, as a factor of variance,
     * with what hangs together in time counted; near 1 where the model is right.
     */
    public double misfit() {
        return misfit;
    }

    /** The time of the last readings, on the curve's own clock. */
    public double endSeconds() {
        return endSeconds;
    }

    /** The chance that the meter comes to show {@code limitPpm} or less at this flow. */
    public double chanceOfReaching(double limitPpm) {
        return draws.chance(draw -> Double.isFinite(draw.minutesTo(limitPpm, model.lag())));
    }

    /** Minutes until the meter shows {@code limitPpm}; bounds are infinite where it may never do so. */
    public Estimate minutesTo(double limitPpm) {
        return draws.estimate(draw -> draw.minutesTo(limitPpm, model.lag()));
    }

    /** What the meter will show over the next {@code minutes}, as {@code count} points of a band of 90 %. */
    public List<Forecast.BandPoint> band(double minutes, int count) {
        return IntStream.range(0, count).mapToObj(i -> {
            double ahead = minutes * i / Math.max(1, count - 1);
            Estimate shown = draws.estimate(draw -> draw.readingAfter(ahead, model.lag()));
            return new Forecast.BandPoint(endSeconds + ahead * 60, shown.low(), shown.value(), shown.high());
        }).toList();
    }

    private static DoubleUnaryOperator belief(LeakExpected expected, CurveModel model) {
        double likely = model.leakParameter(expected.airLitresPerMinute());
        double spread = model.leakParameter(expected.plusMinusLitresPerMinute());
        return leak -> -(leak - likely) * (leak - likely) / (2 * spread * spread);
    }

    private static Draws.Draw draw(PurgeRun run, CurveModel model, double flow, double[] parameters) {
        double[] end = model.end(parameters);
        double efficiency = Math.min(MixingModel.EFFICIENCY_MAX, CurveModel.efficiency(parameters));
        double leak = Math.min(1e6, Math.max(0, model.leakLitresPerMinute(parameters)));
        MixingModel mixing = new MixingModel(run.volumeLitres(), flow, run.supplyPpm(), efficiency, leak, run.airPpm());
        return new Draws.Draw(mixing, end[0], end[1], 0);
    }

    /** Two beginnings: a tight chamber, and one that has levelled off where it is. */
    private static List<double[]> starts(PurgeRun run, MeterTraits meter, FitPoints points, CurveModel model) {
        double now = points.meanPpm(points.size() - 5, points.size(), meter);
        double first = points.scaled()[0];
        double[] tight = {0, EFFICIENCY_LIKELY, first, first};
        double[] level = {Math.max(0, now - run.supplyPpm()), EFFICIENCY_LIKELY, first, first};
        int count = model.hasLag() ? 4 : 3;
        return List.of(Arrays.copyOf(tight, count), Arrays.copyOf(level, count));
    }

    private static LevenbergMarquardt.Fit best(UnaryOperator<double[]> residuals, List<double[]> starts) {
        LevenbergMarquardt.Fit best = null;
        for (double[] start : starts) {
            var fit = LevenbergMarquardt.minimise(residuals, start, steps(start), ITERATIONS);
            if (best == null || fit.cost() < best.cost()) {
                best = fit;
            }
        }
        return best;
    }

    private static double[] steps(double[] parameters) {
        double[] steps = {1e-4 * (1 + Math.abs(parameters[CurveModel.LEAK])), 1e-5, 1e-3, 1e-3};
        return Arrays.copyOf(steps, parameters.length);
    }

    /** The lower triangle of the covariance (J'J)^-1, whose first row is the leak; null where it has none. */
    private static double[][] covarianceRoot(LevenbergMarquardt.Fit fit) {
        double[][] lower = Matrix.cholesky(fit.normal());
        if (lower == null) {
            return null;
        }
        int count = fit.parameters().length;
        double[][] covariance = new double[count][];
        for (int i = 0; i < count; i++) {
            double[] unit = new double[count];
            unit[i] = 1;
            covariance[i] = Matrix.solve(lower, unit);
        }
        return Matrix.cholesky(covariance);
    }

    /** What is left over between model and measurement, in standard deviations, with the priors as further rows. */
    private static final class Misfit implements UnaryOperator<double[]> {

        private final CurveModel model;
        private final FitPoints points;
        private final double[] weights;
        private final double leakSpread;

        Misfit(CurveModel model, FitPoints points, PurgeRun run) {
            this.model = model;
            this.points = points;
            leakSpread = run.airPpm();
            weights = new double[points.size()];
            for (int i = 0; i < weights.length; i++) {
                weights[i] = 1 / points.sigma()[i];
            }
        }

        @Override
        public double[] apply(double[] parameters) {
            double[] rows = Arrays.copyOf(leftOver(parameters), weights.length + 3);
            rows[weights.length] = (parameters[CurveModel.EFFICIENCY] - EFFICIENCY_LIKELY) / EFFICIENCY_SPREAD;
            rows[weights.length + 1] = parameters[CurveModel.LEAK] / leakSpread;
            rows[weights.length + 2] = model.hasLag()
                    ? (parameters[CurveModel.READING] - points.scaled()[0]) / FIRST_READING_SPREAD
                    : 0;
            return rows;
        }

        private double[] leftOver(double[] parameters) {
            double[] shown = model.predict(parameters);
            for (int i = 0; i < shown.length; i++) {
                shown[i] = weights[i] * (shown[i] - points.scaled()[i]);
            }
            return shown;
        }

        /** Takes weight from what lies far off the fit, by Huber's rule. */
        void weigh(double[] parameters) {
            double[] left = leftOver(parameters);
            double[] sizes = Arrays.stream(left).map(Math::abs).sorted().toArray();
            double scale = Math.max(1.4826 * sizes[sizes.length / 2], 0.5);
            for (int i = 0; i < weights.length; i++) {
                weights[i] *= Math.sqrt(Math.min(1, HUBER * scale / Math.max(Math.abs(left[i]), 1e-12)));
            }
        }

        /** Widens all standard deviations by what the left-over says of them; returns the factor of variance. */
        double widen(double[] parameters) {
            double[] left = leftOver(parameters);
            double squares = LevenbergMarquardt.cost(left);
            double neighbours = 0;
            for (int i = 1; i < left.length; i++) {
                neighbours += left[i] * left[i - 1];
            }
            double correlation = squares > 0 ? neighbours / squares : 0;
            double together = correlation > 2 / Math.sqrt(left.length)
                    ? Math.min(TOGETHER_MAX, (1 + correlation) / Math.max(1e-3, 1 - correlation))
                    : 1;
            double freedom = Math.max(1, left.length - parameters.length);
            double factor = Math.max(MISFIT_MIN, squares / freedom) * together;
            for (int i = 0; i < weights.length; i++) {
                weights[i] /= Math.sqrt(factor);
            }
            return factor;
        }
    }
}

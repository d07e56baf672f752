package brightseam.purge;

import brightseam.purge.PurgeOutlook.LevelsOff;
import brightseam.purge.PurgeOutlook.OnCourse;
import brightseam.purge.PurgeOutlook.TooEarly;
import brightseam.purge.PurgeOutlook.Why;
import java.util.Optional;
import java.util.OptionalDouble;

/** How the verdict is found from the fit. */
final class OutlookRules {

    /** Scatter of more than ten times the meter's, as variance and with memory: the model does not hold. */
    private static final double MISFIT_MAX = 400;
    /** A level is seen when the curve is within this factor of it; farther out it is guessed. */
    private static final double SEEN_FACTOR = 2;
    private static final double STILL_AIR = 0.5;
    private static final double FALLEN = 0.9;
    private static final int BAND_POINTS = 40;
    private static final double BAND_MINUTES_MIN = 5;
    private static final double BAND_MINUTES_MAX = 600;

    private OutlookRules() {}

    static PurgeOutlook outlook(
            PurgeRun run, MeterTraits meter, MeasuredCurve curve, double limitPpm, Optional<LeakExpected> expected) {
        FitPoints points = FitPoints.of(curve, meter);
        if (points.size() < PurgeFit.POINTS_MIN) {
            return unknown(Why.TOO_FEW_READINGS);
        }
        int size = points.size();
        double now = points.meanPpm(size - 3, size, meter);
        double flow = run.flowLitresPerMinute(curve.seconds(curve.size() - 1));
        if (flow <= 0) {
            return unknown(Why.NO_FLOW);
        }
        if (now > STILL_AIR * run.airPpm() && now > FALLEN * points.meanPpm(0, 3, meter)) {
            return unknown(Why.NOT_FALLING);
        }
        Optional<PurgeFit> fit = PurgeFit.of(run, meter, curve, expected);
        if (fit.isEmpty() || fit.get().misfit() > MISFIT_MAX) {
            return unknown(Why.DOES_NOT_FIT);
        }
        return verdict(fit.get(), flow, limitPpm, now);
    }

    private static PurgeOutlook verdict(PurgeFit fit, double flow, double limitPpm, double nowPpm) {
        double chance = fit.chanceOfReaching(limitPpm);
        Estimate minutes = fit.minutesTo(limitPpm);
        if (chance >= PurgeOutlook.CHANCE_SURE && Double.isFinite(minutes.high())) {
            double ahead = Math.max(BAND_MINUTES_MIN, Math.min(BAND_MINUTES_MAX, minutes.high() * 1.1));
            Estimate gas = new Estimate(minutes.value() * flow, minutes.low() * flow, minutes.high() * flow);
            return new OnCourse(new Forecast(minutes, gas, fit.band(ahead, BAND_POINTS)), fit);
        }
        Estimate level = fit.levelPpm();
        if (chance <= 1 - PurgeOutlook.CHANCE_SURE && nowPpm < SEEN_FACTOR * level.low()) {
            return new LevelsOff(level, fit.leakAirLitresPerMinute(), level, fit);
        }
        return new TooEarly(Why.LEVEL_NOT_TOLD,
                Double.isFinite(minutes.low()) ? OptionalDouble.of(minutes.low()) : OptionalDouble.empty(), chance);
    }

    private static TooEarly unknown(Why why) {
        return new TooEarly(why, OptionalDouble.empty(), Double.NaN);
    }
}

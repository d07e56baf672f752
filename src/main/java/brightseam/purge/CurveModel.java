package brightseam.purge;

import java.util.Arrays;

/**
 * What a meter with lag would show of a purge with given efficiency and leak, at the times of the fit's points.
 *
 * <p>Between two times the flow is constant, and both the chamber C and the reading m have closed forms: C - E falls as
 * exp(-k t), and m follows as dm/dt = (C - m) / lag. Parameters: the leak as ppm that it adds at the largest flow; the
 * logarithm of the efficiency; chamber and reading at the start, on the meter's scale.
 */
final class CurveModel {

    static final int LEAK = 0;
    static final int EFFICIENCY = 1;
    static final int CHAMBER = 2;
    static final int READING = 3;

    private final PurgeRun run;
    private final MeterTraits meter;
    private final FitPoints points;
    private final double lag;
    private final double flowMost;
    /** One for each stretch of one flow: its length, its flow, and the point at its end or -1. */
    private final double[] lengths;
    private final double[] flows;
    private final int[] ends;

    CurveModel(PurgeRun run, MeterTraits meter, FitPoints points) {
        this.run = run;
        this.meter = meter;
        this.points = points;
        lag = meter.lagMinutes();
        flowMost = Math.max(run.flowMost(), 1e-9);
        int most = points.size() + run.flows().size();
        double[] length = new double[most];
        double[] flow = new double[most];
        int[] end = new int[most];
        int count = 0;
        double at = points.minutes()[0];
        for (int i = 1; i < points.size(); i++) {
            for (PurgeRun.FlowStep step : run.flows()) {
                double change = (step.fromSeconds() - points.startSeconds()) / 60;
                if (change > at && change < points.minutes()[i]) {
                    length[count] = change - at;
                    flow[count] = flowAt(at);
                    end[count++] = -1;
                    at = change;
                }
            }
            length[count] = points.minutes()[i] - at;
            flow[count] = flowAt(at);
            end[count++] = i;
            at = points.minutes()[i];
        }
        lengths = Arrays.copyOf(length, count);
        flows = Arrays.copyOf(flow, count);
        ends = Arrays.copyOf(end, count);
    }

    boolean hasLag() {
        return lag > 0;
    }

    double leakLitresPerMinute(double[] parameters) {
        return parameters[LEAK] * flowMost / run.airPpm();
    }

    double leakParameter(double litresPerMinute) {
        return litresPerMinute * run.airPpm() / flowMost;
    }

    static double efficiency(double[] parameters) {
        return Math.exp(Math.max(-20, Math.min(20, parameters[EFFICIENCY])));
    }

    /** What the meter would show, on its scale, at each point. */
    double[] predict(double[] parameters) {
        double[] shown = new double[points.size()];
        walk(parameters, shown);
        return shown;
    }

    /** Chamber and reading at the last point, in ppm. */
    double[] end(double[] parameters) {
        return walk(parameters, new double[points.size()]);
    }

    private double[] walk(double[] parameters, double[] shown) {
        double leak = leakLitresPerMinute(parameters);
        double efficiency = efficiency(parameters);
        double chamber = meter.ppm(parameters[CHAMBER]);
        double reading = hasLag() ? meter.ppm(parameters[READING]) : chamber;
        shown[0] = meter.scale(reading);
        for (int i = 0; i < lengths.length; i++) {
            double through = efficiency * flows[i] + leak;
            double rate = through / run.volumeLitres();
            double level = through == 0
                    ? chamber
                    : (efficiency * flows[i] * run.supplyPpm() + leak * run.airPpm()) / through;
            reading = reading(chamber, reading, level, rate, lengths[i], lag);
            chamber = level + (chamber - level) * Math.exp(-rate * lengths[i]);
            if (ends[i] >= 0) {
                shown[ends[i]] = meter.scale(reading);
            }
        }
        return new double[] {chamber, reading};
    }

    /** The reading after {@code minutes}, in ppm; that of the chamber itself where there is no lag. */
    static double reading(double chamber, double reading, double level, double rate, double minutes, double lag) {
        double chamberFall = Math.exp(-rate * minutes);
        if (lag <= 0) {
            return level + (chamber - level) * chamberFall;
        }
        double apart = 1 / lag - rate;
        double meterFall = Math.exp(-minutes / lag);
        double shared = Math.abs(apart * minutes) < 1e-5
                ? minutes * chamberFall * (1 - apart * minutes / 2)
                : (chamberFall - meterFall) / apart;
        return level + (reading - level) * meterFall + (chamber - level) / lag * shared;
    }

    double lag() {
        return lag;
    }

    private double flowAt(double minutes) {
        return run.flowLitresPerMinute(points.startSeconds() + minutes * 60 + 1e-9);
    }
}

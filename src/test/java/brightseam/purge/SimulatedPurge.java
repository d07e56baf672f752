package brightseam.purge;

import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * A purge and its meter, integrated numerically and independent of the fit: chamber, a blind cavity that breathes with
 * it, first-order lag, noise, and rounding to the last digit.
 */
record SimulatedPurge(
        double volumeLitres,
        List<PurgeRun.FlowStep> flows,
        double supplyPpm,
        double efficiency,
        double leakAirLitresPerMinute,
        double cavityLitres,
        double cavityLitresPerMinute,
        MeterTraits meter,
        double noiseShare,
        double noisePpm) {

    private static final double STEP_SECONDS = 1;

    static SimulatedPurge plain(double flow, double efficiency, double leak) {
        return new SimulatedPurge(400, List.of(new PurgeRun.FlowStep(0, flow)), 2, efficiency, leak, 1, 0,
                MeterTraits.of(0.1, 0), 0.01, 0.1);
    }

    SimulatedPurge with(MeterTraits otherMeter, double share, double ppm) {
        return new SimulatedPurge(volumeLitres, flows, supplyPpm, efficiency, leakAirLitresPerMinute, cavityLitres,
                cavityLitresPerMinute, otherMeter, share, ppm);
    }

    SimulatedPurge withFlows(PurgeRun.FlowStep... steps) {
        return new SimulatedPurge(volumeLitres, List.of(steps), supplyPpm, efficiency, leakAirLitresPerMinute,
                cavityLitres, cavityLitresPerMinute, meter, noiseShare, noisePpm);
    }

    SimulatedPurge withCavity(double litres, double litresPerMinute) {
        return new SimulatedPurge(volumeLitres, flows, supplyPpm, efficiency, leakAirLitresPerMinute, litres,
                litresPerMinute, meter, noiseShare, noisePpm);
    }

    PurgeRun run() {
        return new PurgeRun(volumeLitres, flows, supplyPpm, RoomAir.OXYGEN_PPM);
    }

    /** What the meter shows without noise at each second: index is the second. */
    double[] shown(int seconds) {
        double[] state = {RoomAir.OXYGEN_PPM, RoomAir.OXYGEN_PPM, RoomAir.OXYGEN_PPM};
        double[] shown = new double[seconds + 1];
        shown[0] = state[2];
        for (int second = 0; second < seconds; second++) {
            double flow = run().flowLitresPerMinute(second);
            state = RungeKutta.integrate((t, y) -> slope(y, flow), state, STEP_SECONDS, 1);
            shown[second + 1] = meter.t90Seconds() == 0 ? state[0] : state[2];
        }
        return shown;
    }

    /** Readings at every {@code everySeconds}, from {@code fromSecond} to {@code toSecond}, with noise of this seed. */
    MeasuredCurve measured(double[] shown, int fromSecond, int toSecond, int everySeconds, long seed) {
        Random random = new Random(seed);
        int count = (toSecond - fromSecond) / everySeconds + 1;
        double[] seconds = new double[count];
        double[] ppm = new double[count];
        for (int i = 0; i < count; i++) {
            int at = fromSecond + i * everySeconds;
            double noise = Math.hypot(noisePpm, noiseShare * shown[at]) * random.nextGaussian();
            double digit = meter.resolutionPpm();
            seconds[i] = at;
            ppm[i] = digit > 0 ? Math.round((shown[at] + noise) / digit) * digit : shown[at] + noise;
        }
        return MeasuredCurve.of(seconds, ppm);
    }

    PurgeOutlook outlook(double[] shown, int toSecond, double limitPpm, long seed) {
        return PurgeOutlook.of(run(), meter, measured(shown, 0, toSecond, 1, seed), limitPpm, Optional.empty());
    }

    /** Per second, of chamber, cavity and meter. */
    private double[] slope(double[] y, double flow) {
        double chamber = (efficiency * flow * (supplyPpm - y[0])
                + leakAirLitresPerMinute * (RoomAir.OXYGEN_PPM - y[0])
                + cavityLitresPerMinute * (y[1] - y[0])) / volumeLitres / 60;
        double cavity = cavityLitresPerMinute * (y[0] - y[1]) / cavityLitres / 60;
        double lagSeconds = Math.max(meter.t90Seconds() / Math.log(10), 1);
        return new double[] {chamber, cavity, (y[0] - y[2]) / lagSeconds};
    }
}

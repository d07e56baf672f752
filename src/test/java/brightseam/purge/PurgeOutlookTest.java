package brightseam.purge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brightseam.purge.PurgeOutlook.LevelsOff;
import brightseam.purge.PurgeOutlook.OnCourse;
import brightseam.purge.PurgeOutlook.TooEarly;
import brightseam.purge.PurgeOutlook.Why;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PurgeOutlookTest {

    private static final double LIMIT = 40;
    private static final int CHAMBERS = 15;
    private static final MeterTraits METER = MeterTraits.of(0.1, 15);

    @Test
    void a_leak_is_called_when_the_curve_has_flattened_above_the_limit_and_with_how_much() {
        SimulatedPurge chamber = SimulatedPurge.plain(60, 0.9, 0.02).with(METER, 0.01, 0.2);
        double[] shown = chamber.shown(5400);
        double level = 2 + 0.02 * 209_458 / 54.02;
        LevelsOff off = (LevelsOff) chamber.outlook(shown, 5400, LIMIT, 1);
        assertThat(off.levelPpm().value()).isCloseTo(level, within(1.));
        assertThat(off.leakAirLitresPerMinute().value()).isCloseTo(0.02, within(0.0005));
        assertThat(off.supplyPpmInstead()).isEqualTo(off.levelPpm());
    }

    @Test
    void impure_gas_makes_the_same_curve_and_is_told_as_the_other_cause() {
        SimulatedPurge chamber = new SimulatedPurge(400, List.of(new PurgeRun.FlowStep(0, 60)), 80, 0.9, 0, 1, 0,
                METER, 0.01, 0.2);
        MeasuredCurve curve = chamber.measured(chamber.shown(5400), 0, 5400, 1, 1);
        LevelsOff off = (LevelsOff) PurgeOutlook.of(PurgeRun.steady(400, 60, 2), METER, curve, LIMIT, Optional.empty());
        assertThat(off.supplyPpmInstead().value()).isCloseTo(80, within(1.));
        assertThat(off.leakAirLitresPerMinute().value()).isCloseTo(78.0 * 54 / 209_460, within(0.0005));
    }

    /** Measured with 60 chambers of each kind, asked ten times each: no promise that failed, none given up. */
    @Test
    void chambers_that_level_off_are_not_promised_the_limit_and_the_others_are_not_given_up() {
        Random random = new Random(12);
        int promised = 0;
        int givenUp = 0;
        int called = 0;
        for (int i = 0; i < CHAMBERS; i++) {
            double leakPpm = 55 + 300 * random.nextDouble();
            SimulatedPurge bad = SimulatedPurge.plain(60, 0.9, leakPpm * 54 / 209_460).with(METER, 0.01, 0.2);
            SimulatedPurge good = SimulatedPurge.plain(60, 0.9, leakPpm / 15 * 54 / 209_460).with(METER, 0.01, 0.2);
            double[] shownBad = bad.shown(6000);
            double[] shownGood = good.shown(6000);
            for (int asked = 60; asked <= 6000; asked += 660) {
                promised += bad.outlook(shownBad, asked, LIMIT, i) instanceof OnCourse ? 1 : 0;
                givenUp += good.outlook(shownGood, asked, LIMIT, i) instanceof LevelsOff ? 1 : 0;
            }
            called += bad.outlook(shownBad, 6000, LIMIT, i) instanceof LevelsOff ? 1 : 0;
        }
        assertThat(promised).as("promises among %d", 10 * CHAMBERS).isLessThanOrEqualTo(CHAMBERS / 5);
        assertThat(givenUp).isZero();
        assertThat(called).isEqualTo(CHAMBERS);
    }

    @Test
    void half_a_minute_is_too_early_and_no_flow_and_no_fall_are_named() {
        SimulatedPurge chamber = SimulatedPurge.plain(60, 0.9, 0).with(METER, 0.01, 0.2);
        double[] shown = chamber.shown(1200);
        assertThat(why(chamber.outlook(shown, 5, LIMIT, 1))).isEqualTo(Why.TOO_FEW_READINGS);
        assertThat(why(chamber.outlook(shown, 30, LIMIT, 1))).isEqualTo(Why.NOT_FALLING);
        assertThat(why(chamber.outlook(shown, 300, LIMIT, 1))).isEqualTo(Why.LEVEL_NOT_TOLD);
        MeasuredCurve curve = chamber.measured(shown, 0, 1200, 1, 1);
        PurgeRun stopped = new PurgeRun(400,
                List.of(new PurgeRun.FlowStep(0, 60), new PurgeRun.FlowStep(1100, 0)), 2, RoomAir.OXYGEN_PPM);
        assertThat(why(PurgeOutlook.of(stopped, METER, curve, LIMIT, Optional.empty()))).isEqualTo(Why.NO_FLOW);
    }

    @Test
    void a_known_leak_gives_the_forecast_earlier() {
        SimulatedPurge chamber = SimulatedPurge.plain(60, 0.9, 0.001).with(METER, 0.01, 0.2);
        double[] shown = chamber.shown(7200);
        MeasuredCurve curve = chamber.measured(shown, 0, 600, 1, 2);
        assertThat(why(chamber.outlook(shown, 600, LIMIT, 2))).isEqualTo(Why.LEVEL_NOT_TOLD);
        Optional<LeakExpected> tested = Optional.of(new LeakExpected(0.001, 0.0005));
        OnCourse early = (OnCourse) PurgeOutlook.of(chamber.run(), METER, curve, LIMIT, tested);
        double truth = (PurgeFitTest.reached(shown, LIMIT) - 600) / 60.0;
        assertThat(early.forecast().minutes().low()).isLessThan(truth);
        assertThat(early.forecast().minutes().high()).isGreaterThan(truth);
    }

    @Test
    void a_limit_that_is_shown_already_needs_no_more_time_and_the_band_goes_on() {
        SimulatedPurge chamber = SimulatedPurge.plain(60, 0.9, 0.001).with(METER, 0.01, 0.2);
        double[] shown = chamber.shown(5000);
        Forecast forecast = ((OnCourse) chamber.outlook(shown, 5000, LIMIT, 1)).forecast();
        assertThat(forecast.minutes()).isEqualTo(new Estimate(0, 0, 0));
        assertThat(forecast.gasLitres()).isEqualTo(new Estimate(0, 0, 0));
        assertThat(forecast.band().getFirst().seconds()).isEqualTo(5000, within(20.));
        assertThat(forecast.band()).allSatisfy(point -> {
            assertThat(point.lowPpm()).isLessThanOrEqualTo(point.middlePpm());
            assertThat(point.middlePpm()).isLessThanOrEqualTo(point.highPpm());
        });
    }

    @Test
    void the_forecast_says_the_gas_and_its_band_crosses_the_limit_where_it_says() {
        SimulatedPurge chamber = SimulatedPurge.plain(60, 0.9, 0.001).with(METER, 0.01, 0.2);
        Forecast forecast = ((OnCourse) chamber.outlook(chamber.shown(3000), 3000, LIMIT, 1)).forecast();
        assertThat(forecast.gasLitres().value()).isCloseTo(60 * forecast.minutes().value(), within(1e-9));
        Forecast.BandPoint end = forecast.band().getLast();
        assertThat((end.seconds() - 3000) / 60).isGreaterThanOrEqualTo(forecast.minutes().high());
        assertThat(end.highPpm()).isLessThan(LIMIT);
        assertThat(forecast.band().getFirst().lowPpm()).isGreaterThan(LIMIT);
    }

    @Test
    void no_readings_however_odd_make_it_throw() {
        Random random = new Random(13);
        for (int i = 0; i < 1500; i++) {
            int count = random.nextInt(200);
            double[] seconds = new double[count];
            double[] ppm = new double[count];
            double scale = Math.exp(random.nextGaussian() * 6);
            int kind = random.nextInt(8);
            for (int k = 0; k < count; k++) {
                seconds[k] = kind == 0 ? 5 : scale * (random.nextInt(5) == 0 ? random.nextInt(100) : k);
                ppm[k] = odd(kind, k, scale, random);
            }
            MeterTraits meter = new MeterTraits(random.nextInt(3), random.nextInt(2), random.nextDouble() / 10,
                    random.nextInt(3) * 40, random.nextBoolean() ? 1e6 : 1000);
            PurgeRun run = new PurgeRun(1 + 500 * random.nextDouble(),
                    List.of(new PurgeRun.FlowStep(0, random.nextInt(4) * 30), new PurgeRun.FlowStep(50, 40)),
                    random.nextInt(3) * 5, RoomAir.OXYGEN_PPM);
            PurgeOutlook outlook = PurgeOutlook.of(run, meter, MeasuredCurve.of(seconds, ppm),
                    random.nextInt(2) * LIMIT, Optional.empty());
            assertThat(outlook).isNotNull();
        }
    }

    @Test
    void readings_that_are_no_numbers_are_left_out_and_the_order_does_not_matter() {
        MeasuredCurve curve = MeasuredCurve.of(
                new double[] {3, 1, 2, Double.NaN, 4}, new double[] {30, 10, Double.NaN, 5, Double.POSITIVE_INFINITY});
        assertThat(curve.size()).isEqualTo(2);
        assertThat(curve.seconds(0)).isEqualTo(1);
        assertThat(curve.ppm(1)).isEqualTo(30);
    }

    private static double odd(int kind, int k, double scale, Random random) {
        return switch (kind) {
            case 0, 1 -> 0;
            case 2 -> -scale * random.nextDouble();
            case 3 -> scale * Math.exp(random.nextGaussian() * 3);
            case 4 -> 209_460;
            case 5 -> k * scale;
            case 6 -> k % 2 == 0 ? 1e9 : -1e9;
            default -> 209_460 * Math.exp(-0.05 * k) + (k > 100 ? 5000 : 0);
        };
    }

    private static Why why(PurgeOutlook outlook) {
        return ((TooEarly) outlook).why();
    }
}

package brightseam.session;

import static brightseam.kernel.Samples.origin;
import static brightseam.session.SessionRig.*;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.kernel.Moment;
import brightseam.kernel.SupplyId;
import brightseam.session.Stretch.Point;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FitnessToWeldTest {

    private static final long NOW = 10_000;
    private static final GasLimits OXYGEN_ALONE = new GasLimits(
            new BigDecimal("20"), Optional.empty(), Duration.ofMinutes(5), Duration.ofSeconds(10));

    @Test
    void fit_once_both_have_been_inside_for_the_dwell() {
        assertThat(judge(LIMITS, steady(O2, 12, 400), steady(H2O, 31.24, 320))).isEqualTo(new Fitness.Fit(
                at(NOW - 320), new BigDecimal("12.0"), Optional.of(new BigDecimal("31.3"))));
    }

    @Test
    void the_dwell_runs_from_the_later_of_both() {
        assertThat(judge(LIMITS, steady(O2, 12, 400), steady(H2O, 31, 299))).isEqualTo(not(
                new SessionRefusal.DwellRunning(at(NOW - 299), at(NOW + 1))));
        assertThat(judge(LIMITS, steady(O2, 12, 400), steady(H2O, 31, 300))).isInstanceOf(Fitness.Fit.class);
    }

    @Test
    void at_the_limit_is_inside_and_above_it_is_not() {
        assertThat(judge(OXYGEN_ALONE, steady(O2, 20, 400), null)).isInstanceOf(Fitness.Fit.class);
        assertThat(judge(OXYGEN_ALONE, steady(O2, 20.01, 400), null)).isEqualTo(not(
                new SessionRefusal.OxygenAboveLimit(O2, new BigDecimal("20.1"), new BigDecimal("20"))));
    }

    @Test
    void every_reason_is_told() {
        assertThat(judge(LIMITS, steady(O2, 30, 400), steady(H2O, 60, 400)).reasons())
                .extracting(brightseam.kernel.Refusal::code)
                .containsExactly("oxygen-above-limit", "moisture-above-limit");
    }

    @Test
    void one_reading_above_begins_the_dwell_anew() {
        List<Point> points = new ArrayList<>(steady(O2, 12, 900).points());
        points.set(700, new Point(points.get(700).elapsedMillis(), 21, true));
        assertThat(judge(OXYGEN_ALONE, new Stretch(O2, List.of(), points), null)).isEqualTo(not(
                new SessionRefusal.DwellRunning(at(NOW - 199), at(NOW + 101))));
    }

    @Test
    void an_unreliable_reading_begins_the_dwell_anew_and_is_no_last_one() {
        List<Point> points = new ArrayList<>(steady(O2, 12, 900).points());
        points.set(700, new Point(points.get(700).elapsedMillis(), 12, false));
        assertThat(judge(OXYGEN_ALONE, new Stretch(O2, List.of(), points), null).reasons())
                .extracting(brightseam.kernel.Refusal::code).containsExactly("dwell-running");
        points.set(900, new Point(points.get(900).elapsedMillis(), 12, false));
        assertThat(judge(OXYGEN_ALONE, new Stretch(O2, List.of(), points), null)).isEqualTo(not(
                new SessionRefusal.MeterNotUsable(O2, List.of("unreliable-reading"))));
    }

    @Test
    void a_gap_begins_the_dwell_anew() {
        List<Point> points = new ArrayList<>(steady(O2, 12, 900).points());
        points.subList(690, 699).clear();
        assertThat(judge(OXYGEN_ALONE, new Stretch(O2, List.of(), points), null)).isInstanceOf(Fitness.Fit.class);
        points.remove(690);
        assertThat(judge(OXYGEN_ALONE, new Stretch(O2, List.of(), points), null)).isEqualTo(not(
                new SessionRefusal.DwellRunning(at(NOW - 200), at(NOW + 100))));
    }

    @Test
    void a_meter_that_fell_silent_makes_it_unfit_by_name() {
        Stretch quiet = new Stretch(O2, List.of(), steady(O2, 12, 900).points().subList(0, 890));
        assertThat(judge(OXYGEN_ALONE, quiet, null)).isEqualTo(not(
                new SessionRefusal.MeterNotUsable(O2, List.of("silent"))));
    }

    @Test
    void a_meter_in_trouble_makes_it_unfit_by_name_whatever_it_reads() {
        Stretch frozen = new Stretch(O2, List.of("frozen", "uncalibrated"), steady(O2, 12, 900).points());
        assertThat(judge(OXYGEN_ALONE, frozen, null)).isEqualTo(not(
                new SessionRefusal.MeterNotUsable(O2, List.of("frozen", "uncalibrated"))));
    }

    @Test
    void no_meter_and_no_reading_are_never_fit() {
        assertThat(judge(LIMITS, null, null)).isEqualTo(not(
                new SessionRefusal.NoOxygenMeter(CHAMBER), new SessionRefusal.NoMoistureMeter(CHAMBER)));
        assertThat(judge(OXYGEN_ALONE, new Stretch(O2, List.of(), List.of()), null)).isEqualTo(not(
                new SessionRefusal.MeterNotUsable(O2, List.of("never-heard"))));
        assertThat(judge(OXYGEN_ALONE, stretch(O2, Double.NaN), null)).isInstanceOf(Fitness.NotFit.class);
    }

    @Test
    void moisture_is_not_asked_for_where_no_limit_is_set() {
        assertThat(judge(OXYGEN_ALONE, steady(O2, 12, 400), stretch(H2O, 900)))
                .isEqualTo(new Fitness.Fit(at(NOW - 400), new BigDecimal("12.0"), Optional.empty()));
    }

    @Test
    void one_reading_is_enough_where_no_dwell_is_asked_for() {
        GasLimits atOnce = new GasLimits(
                new BigDecimal("20"), Optional.empty(), Duration.ZERO, Duration.ofSeconds(10));
        assertThat(judge(atOnce, stretch(O2, 12), null)).isInstanceOf(Fitness.Fit.class);
    }

    @Test
    void readings_out_of_order_are_refused() {
        assertThatThrownBy(() -> new Stretch(O2, List.of(), List.of(
                new Point(2, 1, true), new Point(1, 1, true)))).hasMessageContaining("order");
    }

    private static Fitness judge(GasLimits limits, Stretch oxygen, Stretch moisture) {
        return FitnessToWeld.judge(CHAMBER, limits, Optional.ofNullable(oxygen), Optional.ofNullable(moisture),
                at(NOW));
    }

    private static Fitness.NotFit not(brightseam.kernel.Refusal... reasons) {
        return new Fitness.NotFit(List.of(reasons));
    }

    /** A reading each second, the last one now. */
    private static Stretch steady(SupplyId meter, double ppm, int seconds) {
        List<Point> points = new ArrayList<>();
        for (long second = NOW - seconds; second <= NOW; second++) {
            points.add(new Point(second * 1_000, ppm, true));
        }
        return new Stretch(meter, List.of(), points);
    }

    private static Stretch stretch(SupplyId meter, double ppm) {
        return new Stretch(meter, List.of(), List.of(new Point(NOW * 1_000, ppm, true)));
    }

    private static Moment at(long second) {
        return origin(second).at();
    }
}

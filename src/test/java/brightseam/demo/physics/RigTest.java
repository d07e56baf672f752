package brightseam.demo.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

class RigTest {

    private static final String OXYGEN = "G-1";
    private static final String FLOW = "G-2";
    private static final String PRESSURE = "G-3";
    private static final String LOCK = "G-4";
    private static final String ROOM = "G-5";
    private static final String BUNDLE = "G-6";
    private static final long START = 7_200_000;
    private static final Situation PURGE =
            new Situation(120, 0, false, false, false, false, List.of(BUNDLE), true);
    private static final Situation HOLD = new Situation(30, 0, false, false, false, false, List.of(BUNDLE), true);
    private static final Situation ARC = new Situation(30, 0, false, false, false, true, List.of(BUNDLE), true);

    private final Rig rig = rig();
    private final List<Sample> samples = new ArrayList<>();

    @Test
    void a_skipped_hour_and_an_hour_of_small_steps_give_the_same_readings() {
        Rig watched = rig();
        List<Sample> slowly = new ArrayList<>();
        run(PURGE, Duration.ofHours(1));
        for (long at = START; at <= START + 3_600_000; at += 1_700) {
            watched.run(PURGE, at, slowly::add);
        }
        watched.run(PURGE, START + 3_600_000, slowly::add);
        assertThat(samples).hasSameSizeAs(slowly).hasSizeGreaterThan(3 * 3_600);
        for (int i = 0; i < samples.size(); i++) {
            assertThat(samples.get(i).elapsedMillis()).isEqualTo(slowly.get(i).elapsedMillis());
            assertThat(samples.get(i).value()).isCloseTo(slowly.get(i).value(), within(0.1));
        }
        assertThat(rig.physics().ppm(Gas.OXYGEN, Space.CHAMBER))
                .isCloseTo(watched.physics().ppm(Gas.OXYGEN, Space.CHAMBER), within(1e-3));
    }

    @Test
    void a_month_that_is_skipped_is_read_coarsely_and_its_end_finely() {
        run(Situation.idle(List.of(BUNDLE)), Duration.ofDays(30));
        List<Long> times = times(OXYGEN);
        assertThat(times).hasSizeBetween(4_000, 7_000);
        assertThat(times.getLast() - times.get(times.size() - 2)).isEqualTo(1_000);
        assertThat(times.getFirst() - START).isGreaterThan(60_000);
    }

    @Test
    void a_purge_is_read_every_second() {
        run(PURGE, Duration.ofMinutes(110));
        assertThat(times(OXYGEN)).hasSize(110 * 60);
        assertThat(last(OXYGEN)).isLessThan(30);
        assertThat(last(FLOW)).isCloseTo(120, within(3.0));
    }

    @Test
    void cylinders_empty_and_then_nothing_flows_and_the_leak_shows() {
        rig.deliver(BUNDLE, new Bottle(new Cylinders(50, 60, 20), 1.5, 3));
        run(PURGE, Duration.ofMinutes(40));
        assertThat(last(FLOW)).isCloseTo(0, within(0.5));
        assertThat(last(PRESSURE)).isCloseTo(0, within(0.5));
        double stopped = rig.physics().ppm(Gas.OXYGEN, Space.CHAMBER);
        run(PURGE, Duration.ofHours(2));
        assertThat(rig.physics().ppm(Gas.OXYGEN, Space.CHAMBER)).isGreaterThan(stopped);
    }

    @Test
    void a_frozen_gauge_repeats_itself_and_a_silent_one_says_nothing() {
        run(PURGE, Duration.ofMinutes(1));
        rig.faults().freeze(OXYGEN);
        run(PURGE, Duration.ofMinutes(5));
        assertThat(values(OXYGEN).subList(60, 360)).containsOnly(values(OXYGEN).get(59));
        rig.faults().mend(OXYGEN);
        rig.faults().silence(OXYGEN, rig.atMillis(), Long.MAX_VALUE);
        int before = values(OXYGEN).size();
        run(PURGE, Duration.ofMinutes(1));
        assertThat(values(OXYGEN)).hasSize(before);
        rig.faults().mendAll();
        run(PURGE, Duration.ofMinutes(1));
        assertThat(values(OXYGEN)).hasSize(before + 60);
    }

    @Test
    void what_is_set_for_the_next_arc_happens_in_that_one_alone() {
        fit();
        rig.faults().silenceInNextArc(OXYGEN, Duration.ofSeconds(20), Duration.ofSeconds(15));
        rig.faults().puffInNextArc(0.25, Duration.ofSeconds(60));
        double before = last(OXYGEN);
        long start = rig.atMillis();
        run(ARC, Duration.ofMinutes(3));
        assertThat(times(OXYGEN)).contains(start + 19_000, start + 36_000)
                .doesNotContain(start + 20_000, start + 28_000, start + 35_000);
        assertThat(last(OXYGEN)).isGreaterThan(before + 30);
        int read = values(OXYGEN).size();
        run(HOLD, Duration.ofMinutes(1));
        run(ARC, Duration.ofMinutes(3));
        assertThat(values(OXYGEN)).hasSize(read + 240);
    }

    @Test
    void a_leak_that_is_set_makes_the_curve_flatten_above_the_limit() {
        rig.faults().leak(0.03);
        run(PURGE, Duration.ofHours(3));
        double expected = 1.5 + (0.03 + Rig.TIGHT_LITRES_PER_MINUTE) * 209_460 / (0.88 * 120);
        assertThat(rig.physics().ppm(Gas.OXYGEN, Space.CHAMBER)).isCloseTo(expected, within(3.0)).isGreaterThan(50);
    }

    @Test
    void a_lock_that_was_not_purged_long_enough_spoils_the_chamber_when_its_inner_door_opens() {
        fit();
        run(new Situation(30, 0, false, true, false, false, List.of(BUNDLE), true), Duration.ofMinutes(2));
        double air = last(LOCK);
        run(new Situation(30, 40, false, false, false, false, List.of(BUNDLE), true), Duration.ofMinutes(10));
        assertThat(last(LOCK)).isLessThan(air / 10);
        double before = rig.physics().ppm(Gas.OXYGEN, Space.CHAMBER);
        run(new Situation(30, 0, false, false, true, false, List.of(BUNDLE), true), Duration.ofMinutes(2));
        assertThat(rig.physics().ppm(Gas.OXYGEN, Space.CHAMBER)).isGreaterThan(before + 50);
    }

    @Test
    void without_ventilation_the_vented_argon_stays_in_the_room() {
        run(PURGE, Duration.ofHours(1));
        assertThat(last(ROOM)).isGreaterThan(20.3);
        rig.faults().ventilationOff(true);
        run(PURGE, Duration.ofHours(3));
        assertThat(last(ROOM)).isLessThan(19.5);
    }

    private void fit() {
        run(PURGE, Duration.ofMinutes(120));
        run(HOLD, Duration.ofMinutes(10));
    }

    private void run(Situation now, Duration time) {
        rig.run(now, rig.atMillis() + time.toMillis(), samples::add);
    }

    private List<Double> values(String gauge) {
        return samples.stream().filter(of(gauge)).map(Sample::value).toList();
    }

    private List<Long> times(String gauge) {
        return samples.stream().filter(of(gauge)).map(Sample::elapsedMillis).toList();
    }

    private double last(String gauge) {
        return values(gauge).getLast();
    }

    private static Predicate<Sample> of(String gauge) {
        return sample -> sample.label().equals(gauge);
    }

    private static Rig rig() {
        Rig rig = new Rig(ChamberBody.demo(), List.of(
                gauge(OXYGEN, Signal.CHAMBER_OXYGEN_PPM, 6, new Instrument(1, 0.1, 0.004, 0.1, 0, 250_000)),
                gauge(FLOW, Signal.PURGE_LITRES_PER_MINUTE, 0, new Instrument(2, 0.2, 0.004, 0.1, 0, 200)),
                gauge(PRESSURE, Signal.SUPPLY_BAR, 0, new Instrument(3, 0.1, 0, 0.1, 0, 250)),
                gauge(LOCK, Signal.LOCK_OXYGEN_PPM, 8, new Instrument(4, 0.1, 0.004, 0.1, 0, 250_000)),
                gauge(ROOM, Signal.ROOM_OXYGEN_PERCENT, 15, new Instrument(5, 0.02, 0, 0.01, 0, 25))), START);
        rig.deliver(BUNDLE, new Bottle(new Cylinders(12 * 50, 200, 20), 1.5, 3));
        return rig;
    }

    private static Gauge gauge(String label, Signal signal, int lagSeconds, Instrument instrument) {
        return new Gauge(label, signal, Duration.ofSeconds(lagSeconds), Duration.ofSeconds(1), instrument);
    }
}

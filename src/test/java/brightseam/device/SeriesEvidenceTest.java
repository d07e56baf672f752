package brightseam.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import brightseam.device.SeriesEvidence.Excursion;
import brightseam.device.SeriesEvidence.Gap;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SeriesEvidenceTest {

    private static final double LIMIT = 20;

    private static SeriesEvidence of(long from, long to, long gap, Reading... readings) {
        return SeriesEvidence.of(Series.of(List.of(readings)), from, to, LIMIT, gap);
    }

    @Test
    void between_two_readings_the_value_runs_straight_and_before_and_after_it_stands_still() {
        SeriesEvidence evidence = of(0, 4000, 1000,
                new Reading(1000, 10), new Reading(2000, 30), new Reading(3000, 10));
        assertThat(evidence.highest()).isEqualTo(30);
        assertThat(evidence.meanTimeWeighted()).isEqualTo((10 + 20 + 20 + 10) / 4.0);
        assertThat(evidence.excursions()).containsExactly(new Excursion(1500, 2500, 30));
        assertThat(evidence.millisAbove()).isEqualTo(1000);
        assertThat(evidence.gaps()).isEmpty();
        assertThat(evidence.isProven()).isTrue();
        assertThat(evidence.isWithinLimit()).isFalse();
    }

    @Test
    void at_the_limit_is_not_above_it() {
        assertThat(of(0, 100, 100, new Reading(0, LIMIT), new Reading(100, LIMIT)).isWithinLimit()).isTrue();
        assertThat(of(0, 100, 100, new Reading(0, LIMIT), new Reading(100, Math.nextUp(LIMIT))).isWithinLimit())
                .isFalse();
    }

    @Test
    void nothing_is_assumed_inside_a_gap_and_an_excursion_that_runs_into_one_ends_with_its_last_reading() {
        SeriesEvidence evidence = of(0, 9000, 1000, new Reading(0, 10), new Reading(1000, 30),
                new Reading(5000, 40), new Reading(6000, 10), new Reading(9000, 50));
        assertThat(evidence.gaps()).containsExactly(new Gap(1000, 5000), new Gap(6000, 9000));
        assertThat(evidence.excursions()).containsExactly(new Excursion(500, 1000, 30),
                new Excursion(5000, 5667, 40), new Excursion(9000, 9000, 50));
        assertThat(evidence.meanTimeWeighted()).isEqualTo((20 + 25) / 2.0);
        assertThat(evidence.isProven()).isFalse();
    }

    @Test
    void both_ends_have_to_be_covered() {
        SeriesEvidence evidence = of(0, 10_000, 1000, new Reading(1001, 10), new Reading(2000, 10));
        assertThat(evidence.gaps()).containsExactly(new Gap(0, 1001), new Gap(2000, 10_000));
        SeriesEvidence none = of(0, 10_000, 1000, new Reading(10_001, 10));
        assertThat(none.gaps()).containsExactly(new Gap(0, 10_000));
        assertThat(none.count()).isZero();
        assertThat(none.highest()).isNaN();
        assertThat(none.isProven()).isFalse();
    }

    @Test
    void a_doubtful_reading_counts_with_its_value_and_nothing_is_proven_by_it() {
        SeriesEvidence evidence = of(0, 1000, 1000, new Reading(0, 10),
                new Reading(500, 1000, Set.of(Quality.OUT_OF_RANGE)), new Reading(1000, 10));
        assertThat(evidence.highest()).isEqualTo(1000);
        assertThat(evidence.doubtful()).isEqualTo(1);
        assertThat(evidence.isProven()).isFalse();
        assertThat(of(0, 500, 500, new Reading(0, 10, Set.of(Quality.TYPED)), new Reading(500, 10)).isProven())
                .isTrue();
    }

    @Test
    void a_late_reading_changes_nothing_so_that_the_same_is_found_ever_after() {
        SeriesEvidence before = of(0, 1000, 1000, new Reading(0, 10), new Reading(1000, 10));
        SeriesEvidence after = of(0, 1000, 1000, new Reading(0, 10),
                new Reading(500, 90, Set.of(Quality.LATE)), new Reading(1000, 10));
        assertThat(after).isEqualTo(before);
    }

    @Test
    void a_stranger_can_hash_the_same_lines() throws Exception {
        SeriesEvidence evidence = of(0, 9000, 9000, new Reading(1000, 12.5), new Reading(2000, 12),
                new Reading(2500, 0.00001, Set.of(Quality.SIMULATED, Quality.FROZEN)),
                new Reading(3000, 2.5e7, Set.of(Quality.TYPED)), new Reading(9001, 3));
        String lines = "1000 12.5 -\n2000 12 -\n2500 0.00001 frozen,simulated\n3000 25000000 typed\n";
        assertThat(evidence.sha256()).isEqualTo(HexFormat.of().formatHex(
                MessageDigest.getInstance("SHA-256").digest(lines.getBytes(StandardCharsets.UTF_8))));
        assertThat(evidence.simulated()).isTrue();
    }

    /** Against the definition, millisecond by millisecond. */
    @Test
    void the_computed_times_are_those_of_the_straight_lines_themselves() {
        for (long seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            List<Reading> readings = new ArrayList<>();
            long at = random.nextInt(300);
            while (at < 4000) {
                readings.add(new Reading(at, random.nextInt(400) / 10.0));
                at += 1 + random.nextInt(random.nextInt(10) == 0 ? 900 : 200);
            }
            SeriesEvidence evidence = SeriesEvidence.of(Series.of(readings), 0, 4000, LIMIT, 250);
            double[] slow = bySteps(readings, 4000, 250);
            assertThat((double) evidence.millisAbove()).as("above, seed %d", seed)
                    .isCloseTo(slow[0], within(2.0 * evidence.excursions().size() + 1));
            assertThat(evidence.meanTimeWeighted()).as("mean, seed %d", seed).isCloseTo(slow[1], within(0.05));
            assertThat(evidence.gaps().stream().mapToLong(Gap::millis).sum()).as("gaps, seed %d", seed)
                    .isEqualTo((long) slow[2]);
            assertThat(evidence.highest()).isEqualTo(
                    readings.stream().mapToDouble(Reading::value).max().orElseThrow());
            assertThat(evidence.isWithinLimit()).isEqualTo(readings.stream().allMatch(r -> r.value() <= LIMIT));
        }
    }

    /** Time above, mean and time in gaps, from the value in the middle of every millisecond. */
    private static double[] bySteps(List<Reading> readings, long to, long gap) {
        double above = 0;
        double sum = 0;
        double uncovered = 0;
        for (long at = 0; at < to; at++) {
            double value = value(readings, at + 0.5, to, gap);
            above += value > LIMIT ? 1 : 0;
            sum += Double.isNaN(value) ? 0 : value;
            uncovered += Double.isNaN(value) ? 1 : 0;
        }
        return new double[] {above, sum / (to - uncovered), uncovered};
    }

    private static double value(List<Reading> readings, double at, long to, long gap) {
        Reading first = readings.getFirst();
        Reading last = readings.getLast();
        if (at < first.elapsedMillis()) {
            return first.elapsedMillis() <= gap ? first.value() : Double.NaN;
        }
        if (at > last.elapsedMillis()) {
            return to - last.elapsedMillis() <= gap ? last.value() : Double.NaN;
        }
        for (int i = 1; i < readings.size(); i++) {
            Reading a = readings.get(i - 1);
            Reading b = readings.get(i);
            if (at <= b.elapsedMillis()) {
                double share = (at - a.elapsedMillis()) / (b.elapsedMillis() - a.elapsedMillis());
                return b.elapsedMillis() - a.elapsedMillis() > gap ? Double.NaN
                        : a.value() + share * (b.value() - a.value());
            }
        }
        throw new AssertionError("a time between the first reading and the last");
    }

    @Test
    void a_stretch_that_ends_before_it_begins_is_a_mistake() {
        assertThatThrownBy(() -> of(10, 9, 5)).isInstanceOf(IllegalArgumentException.class);
    }
}

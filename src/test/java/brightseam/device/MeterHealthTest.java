package brightseam.device;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class MeterHealthTest {

    private static final Meter FAST = SampleMeters.oxygen(new Feed.Http());
    private static final Meter TYPED = SampleMeters.oxygen(new Feed.Typed(Duration.ofMinutes(2)));
    private static final Meter SIMULATED = SampleMeters.oxygen(new Feed.Simulated());

    private MeterHealth health = MeterHealth.unheard();

    private Reading take(Meter meter, long at, double value, long received) {
        Reading judged = health.judged(meter, new Reading(at, value), true, false, received);
        health = health.after(judged);
        return judged;
    }

    private Reading take(Meter meter, long at, double value) {
        return take(meter, at, value, at);
    }

    private Set<Trouble> troubles(Meter meter, long now) {
        return health.troubles(meter, true, now);
    }

    @Test
    void a_meter_that_was_never_heard_is_in_trouble() {
        assertThat(troubles(FAST, 100_000)).containsExactly(Trouble.NEVER_HEARD);
    }

    @Test
    void a_meter_is_silent_when_five_readings_are_missing() {
        take(FAST, 10_000, 12);
        assertThat(troubles(FAST, 10_500)).isEmpty();
        assertThat(troubles(FAST, 10_501)).containsExactly(Trouble.SILENT);
    }

    @Test
    void typed_readings_are_overdue_when_their_interval_is_over_and_are_never_frozen() {
        for (int i = 0; i < 50; i++) {
            assertThat(take(TYPED, i * 60_000L, 12).quality()).containsExactly(Quality.TYPED);
        }
        assertThat(troubles(TYPED, 49 * 60_000 + 120_000)).isEmpty();
        assertThat(troubles(TYPED, 49 * 60_000 + 120_001)).containsExactly(Trouble.OVERDUE);
    }

    @Test
    void the_very_same_value_for_more_than_two_minutes_is_frozen_and_one_other_value_ends_it() {
        for (long at = 0; at <= 120_000; at += 100) {
            assertThat(take(FAST, at, 12.3).quality()).isEmpty();
        }
        assertThat(troubles(FAST, 120_000)).isEmpty();
        assertThat(take(FAST, 120_100, 12.3).quality()).containsExactly(Quality.FROZEN);
        assertThat(troubles(FAST, 120_100)).containsExactly(Trouble.FROZEN);
        assertThat(take(FAST, 120_200, 12.4).quality()).isEmpty();
        assertThat(troubles(FAST, 120_200)).isEmpty();
    }

    @Test
    void nine_equal_readings_of_a_slow_meter_are_no_proof() {
        for (int i = 0; i < 9; i++) {
            assertThat(take(FAST, i * 60_000L, 12.3).quality()).isEmpty();
        }
        assertThat(take(FAST, 9 * 60_000L, 12.3).quality()).containsExactly(Quality.FROZEN);
    }

    @Test
    void a_live_meter_with_noise_wider_than_its_resolution_is_never_called_frozen() {
        Random random = new Random(11);
        for (int i = 0; i < 200_000; i++) {
            double noisy = Math.round((12 + 0.1 * random.nextGaussian()) * 10) / 10.0;
            assertThat(take(FAST, i * 100L, noisy).quality()).isEmpty();
        }
    }

    @Test
    void both_ends_of_the_range_are_out_of_range() {
        assertThat(take(FAST, 0, 999.9).quality()).isEmpty();
        assertThat(take(FAST, 100, 1000).quality()).containsExactly(Quality.OUT_OF_RANGE);
        assertThat(troubles(FAST, 100)).containsExactly(Trouble.OUT_OF_RANGE);
        assertThat(take(FAST, 200, 0).quality()).containsExactly(Quality.OUT_OF_RANGE);
        assertThat(take(FAST, 300, -4).quality()).containsExactly(Quality.OUT_OF_RANGE);
    }

    @Test
    void a_reading_without_calibration_says_so_for_ever() {
        assertThat(health.judged(FAST, new Reading(0, 12), false, false, 0).quality())
                .containsExactly(Quality.UNCALIBRATED);
        assertThat(health.troubles(FAST, false, 0)).contains(Trouble.UNCALIBRATED);
    }

    @Test
    void a_reading_is_late_after_ten_seconds_or_when_its_stretch_was_settled() {
        assertThat(take(FAST, 5_000, 12, 15_000).quality()).isEmpty();
        assertThat(take(FAST, 5_100, 12, 15_101).quality()).containsExactly(Quality.LATE);
        assertThat(troubles(FAST, 5_100)).containsExactly(Trouble.LATE);
        assertThat(health.judged(FAST, new Reading(15_000, 12), true, true, 15_000).quality())
                .containsExactly(Quality.LATE);
    }

    @Test
    void what_a_program_makes_up_is_marked_and_never_late() {
        assertThat(take(SIMULATED, 5_000, 12, 90_000_000).quality()).containsExactly(Quality.SIMULATED);
        assertThat(troubles(SIMULATED, 5_000)).isEmpty();
    }

    @Test
    void a_reading_that_is_older_than_the_last_changes_nothing_of_now() {
        take(FAST, 5_000, 12);
        take(FAST, 4_000, 999_999);
        assertThat(health.last().orElseThrow().value()).isEqualTo(12);
        assertThat(troubles(FAST, 5_000)).isEmpty();
    }

    @Test
    void a_clock_that_is_off_is_said_and_stops_nothing() {
        Reading off = new Reading(100, 12, Set.of(Quality.CLOCK_OFF));
        health = health.after(off);
        MeterNow now = new MeterNow(FAST, health.last(), Duration.ZERO, troubles(FAST, 100), false);
        assertThat(now.troubles()).containsExactly(Trouble.CLOCK_OFF);
        assertThat(now.isUsable()).isTrue();
    }
}

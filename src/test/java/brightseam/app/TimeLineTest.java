package brightseam.app;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.app.TimeLine.Anchor;
import brightseam.app.TimeLine.Sample;
import brightseam.kernel.Moment;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;

class TimeLineTest {

    private static final Instant EIGHT = Instant.parse("2031-03-04T08:00:00Z");
    private static final Sample START = sample(0, EIGHT, "first", 100);

    @Test
    void elapsed_time_follows_the_steady_counter() {
        TimeLine line = TimeLine.begin(false, 1, START);
        assertThat(line.at(sample(90, EIGHT.plusSeconds(90), "first", 190)))
                .isEqualTo(new Moment(EIGHT.plusSeconds(90), 90_000));
    }

    @Test
    void a_stepped_wall_clock_neither_stretches_nor_shortens_elapsed_time() {
        TimeLine line = TimeLine.begin(false, 1, START);
        Instant stepped = EIGHT.minus(Duration.ofHours(5));
        assertThat(line.at(sample(60, stepped, "first", 160))).isEqualTo(new Moment(stepped, 60_000));
        Instant ahead = EIGHT.plus(Duration.ofDays(3));
        assertThat(line.at(sample(60, ahead, "first", 160))).isEqualTo(new Moment(ahead, 60_000));
    }

    @Test
    void time_asleep_counts() {
        TimeLine line = TimeLine.begin(false, 1, START);
        assertThat(line.at(sample(10, EIGHT.plusSeconds(610), "first", 710)).elapsedMillis()).isEqualTo(610_000);
    }

    @Test
    void the_coarse_uptime_alone_moves_nothing() {
        TimeLine line = TimeLine.begin(false, 1, START);
        assertThat(line.at(new Sample(0, EIGHT, "first", 100_490)).elapsedMillis()).isZero();
    }

    @Test
    void fractions_add_up() {
        TimeLine line = TimeLine.begin(false, 1, START);
        for (int i = 1; i <= 10_000; i++) {
            line = line.to(new Sample(i * 100_400L, EIGHT, "first", 100_000 + i / 10));
        }
        assertThat(line.at(line.taken()).elapsedMillis()).isEqualTo(1_004);
    }

    @Test
    void a_restart_of_the_server_counts_by_the_machine_s_uptime_whatever_the_wall_says() {
        Anchor anchor = TimeLine.begin(false, 1, START).anchor(sample(60, EIGHT.plusSeconds(60), "first", 160));
        Sample later = sample(7, EIGHT.minusSeconds(9_999), "first", 460);
        TimeLine line = TimeLine.resume(anchor, 0, false, 1, later);
        assertThat(line.at(later).elapsedMillis()).isEqualTo(360_000);
    }

    @Test
    void a_restart_of_the_machine_counts_by_the_wall_clock() {
        Sample later = sample(7, EIGHT.plusSeconds(360), "second", 20);
        assertThat(resumed(later, 0)).isEqualTo(360_000);
    }

    @Test
    void a_restart_of_the_machine_with_the_wall_clock_stepped_back_counts_nothing() {
        Sample later = sample(7, EIGHT.minusSeconds(5), "second", 20);
        assertThat(resumed(later, 0)).isEqualTo(60_000);
    }

    @Test
    void where_the_system_tells_no_start_the_wall_clock_counts() {
        Sample start = sample(0, EIGHT, "", 0);
        Anchor anchor = TimeLine.begin(false, 1, start).anchor(sample(60, EIGHT.plusSeconds(60), "", 0));
        Sample later = sample(7, EIGHT.plusSeconds(100), "", 0);
        assertThat(TimeLine.resume(anchor, 0, false, 1, later).at(later).elapsedMillis()).isEqualTo(100_000);
    }

    @Test
    void an_uptime_that_fell_though_the_start_is_the_same_is_not_believed() {
        Sample later = sample(7, EIGHT.plusSeconds(75), "first", 3);
        assertThat(resumed(later, 0)).isEqualTo(75_000);
    }

    @Test
    void time_never_runs_back_behind_what_was_recorded() {
        Sample later = sample(7, EIGHT.minusSeconds(5), "second", 20);
        assertThat(resumed(later, 61_500)).isEqualTo(61_500);
    }

    @Test
    void a_demo_clock_runs_both_time_lines_at_its_speed() {
        TimeLine line = TimeLine.begin(true, 60, START);
        Sample minute = sample(60, EIGHT.minusSeconds(1_000), "first", 160);
        assertThat(line.at(minute)).isEqualTo(new Moment(EIGHT.plusSeconds(3_600), 3_600_000));
    }

    @Test
    void a_changed_speed_leaves_what_has_passed() {
        TimeLine line = TimeLine.begin(true, 60, START).withSpeed(2, sample(10, EIGHT, "first", 110));
        assertThat(line.at(sample(15, EIGHT, "first", 115)))
                .isEqualTo(new Moment(EIGHT.plusSeconds(610), 610_000));
    }

    @Test
    void a_skip_moves_both_time_lines_and_outlives_a_restart() {
        TimeLine line = TimeLine.begin(true, 1, START).skip(Duration.ofHours(2), START);
        assertThat(line.at(START)).isEqualTo(new Moment(EIGHT.plusSeconds(7_200), 7_200_000));
        Sample later = sample(0, EIGHT.plusSeconds(30), "first", 130);
        assertThat(TimeLine.resume(line.anchor(START), 0, true, 600, later).at(later))
                .isEqualTo(new Moment(EIGHT.plusSeconds(7_230), 7_230_000));
    }

    private static long resumed(Sample later, long elapsedMillisMin) {
        Anchor anchor = TimeLine.begin(false, 1, START).anchor(sample(60, EIGHT.plusSeconds(60), "first", 160));
        return TimeLine.resume(anchor, elapsedMillisMin, false, 1, later).at(later).elapsedMillis();
    }

    private static Sample sample(long seconds, Instant wall, String bootId, long uptimeSeconds) {
        return new Sample(seconds * 1_000_000_000, wall, bootId, uptimeSeconds * 1_000);
    }
}

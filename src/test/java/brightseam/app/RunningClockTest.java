package brightseam.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.kernel.Moment;
import brightseam.kernel.shell.DemoClock;
import brightseam.kernel.shell.ShopClock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RunningClockTest {

    private static final Instant EIGHT = Instant.parse("2031-03-04T08:00:00Z");

    private final List<TimeLine.Anchor> notes = new ArrayList<>();
    private TimeLine.Sample sample = new TimeLine.Sample(0, EIGHT, "first", 1_000);

    @Test
    void a_demo_clock_can_be_hurried_and_notes_that_down_at_once() {
        try (HurriedClock clock = new HurriedClock(TimeLine.begin(true, 1, sample), () -> sample, notes::add)) {
            pass(10);
            clock.setSpeed(60);
            pass(10);
            clock.skip(Duration.ofMinutes(5));
            assertThat(clock.now()).isEqualTo(new Moment(EIGHT.plusSeconds(910), 910_000));
            assertThat(notes).extracting(TimeLine.Anchor::elapsedMillis).containsExactly(10_000L, 910_000L);
            assertThat(clock.speed()).isEqualTo(60);
            assertThat(clock.isDemo()).isTrue();
        }
    }

    @Test
    void a_speed_out_of_reason_and_a_skip_backwards_are_refused() {
        try (HurriedClock clock = new HurriedClock(TimeLine.begin(true, 1, sample), () -> sample, notes::add)) {
            for (double speed : new double[] {0, -1, 1e9, Double.NaN}) {
                assertThatThrownBy(() -> clock.setSpeed(speed)).isInstanceOf(IllegalArgumentException.class);
            }
            assertThatThrownBy(() -> clock.skip(Duration.ofSeconds(-1))).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void the_clock_of_a_shop_of_one_s_own_cannot_be_hurried_and_notes_down_at_the_end() {
        RunningClock clock = new RunningClock(TimeLine.begin(false, 1, sample), () -> sample, notes::add);
        ShopClock seen = clock;
        assertThat(seen).isNotInstanceOf(DemoClock.class);
        pass(3);
        clock.close();
        assertThat(notes).extracting(TimeLine.Anchor::elapsedMillis).containsExactly(3_000L);
        assertThat(clock.isDemo()).isFalse();
    }

    @Test
    void the_machine_s_clocks_run_forward() {
        MachineClocks clocks = new MachineClocks();
        TimeLine.Sample before = clocks.sample();
        TimeLine.Sample after = clocks.sample();
        assertThat(after.nanos()).isGreaterThan(before.nanos());
        assertThat(after.uptimeMillis()).isGreaterThanOrEqualTo(before.uptimeMillis());
        assertThat(after.bootId()).isEqualTo(before.bootId());
    }

    private void pass(long seconds) {
        sample = new TimeLine.Sample(
                sample.nanos() + seconds * 1_000_000_000, sample.wall().plusSeconds(seconds), sample.bootId(),
                sample.uptimeMillis() + seconds * 1_000);
    }
}

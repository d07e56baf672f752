package brightseam.purge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RiseTestTest {

    @Test
    void the_leak_is_the_one_that_lets_it_rise_so_fast() {
        for (double leak : new double[] {0.001, 0.02, 1, 30}) {
            MixingModel closed = new MixingModel(400, 0, 0, 1, leak);
            RiseTest test = new RiseTest(400, 30, 12, closed.ppmAfter(30, 12), 0.1);
            assertThat(test.leakAirLitresPerMinute()).isCloseTo(leak, within(1e-6 * leak));
        }
    }

    @Test
    void a_small_leak_is_volume_times_rise_over_air() {
        RiseTest test = new RiseTest(400, 20, 10, 30, 0.5);
        assertThat(test.leakAirLitresPerMinute()).isCloseTo(400 * 20 / 20.0 / 209_460, within(1e-6));
        assertThat(test.plusMinusLitresPerMinute()).isCloseTo(test.leakAirLitresPerMinute() / 20, within(1e-6));
        assertThat(test.showsLeak()).isTrue();
    }

    @Test
    void a_rise_within_the_readings_doubt_shows_no_leak() {
        assertThat(new RiseTest(400, 20, 10, 10.5, 0.5).showsLeak()).isFalse();
        assertThat(new RiseTest(400, 20, 10, 8, 0.5).leakAirLitresPerMinute()).isNegative();
        assertThatThrownBy(() -> new RiseTest(400, 20, 10, 209_460, 0.5)).hasMessageContaining("end");
    }
}

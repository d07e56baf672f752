package brightseam.demo.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InstrumentTest {

    @Test
    void noise_has_the_spread_that_it_is_said_to_have_and_no_bias() {
        Instrument instrument = new Instrument(7, 0.3, 0.02, 0, -1e6, 1e6);
        double[] shown = LongStream.range(0, 20_000).mapToDouble(i -> instrument.shows(20, i * 1_000)).toArray();
        double mean = LongStream.range(0, shown.length).mapToDouble(i -> shown[(int) i]).average().orElseThrow();
        double variance = LongStream.range(0, shown.length)
                .mapToDouble(i -> Math.pow(shown[(int) i] - mean, 2)).sum() / (shown.length - 1);
        assertThat(mean).isCloseTo(20, within(0.015));
        assertThat(Math.sqrt(variance)).isCloseTo(Math.hypot(0.3, 0.4), within(0.015));
    }

    @Test
    void the_same_seed_and_time_show_the_same_and_another_seed_another() {
        Instrument one = new Instrument(1, 1, 0, 0, 0, 1_000);
        assertThat(one.shows(500, 123_000)).isEqualTo(new Instrument(1, 1, 0, 0, 0, 1_000).shows(500, 123_000));
        assertThat(one.shows(500, 123_000)).isNotEqualTo(new Instrument(2, 1, 0, 0, 0, 1_000).shows(500, 123_000));
        assertThat(one.shows(500, 123_000)).isNotEqualTo(one.shows(500, 124_000));
    }

    @Test
    void a_display_has_steps_and_ends() {
        Instrument instrument = new Instrument(3, 0, 0, 0.5, 0, 100);
        assertThat(instrument.shows(12.6, 1)).isEqualTo(12.5);
        assertThat(instrument.shows(12.8, 1)).isEqualTo(13.0);
        assertThat(instrument.shows(-4, 1)).isZero();
        assertThat(instrument.shows(209_460, 1)).isEqualTo(100);
    }

    /** Published table of frost points (ppm by volume at one atmosphere, over ice), read in a reprint; within 1 %. */
    @ParameterizedTest
    @CsvSource({"2566, -10", "375.3, -30", "126.8, -40", "38.89, -50", "10.68, -60", "2.584, -70"})
    void moisture_becomes_a_frost_point(double ppm, double celsius) {
        assertThat(Frost.celsius(ppm)).isCloseTo(celsius, within(0.1));
    }
}

package brightseam.ui.chamber;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.Moment;
import java.math.BigDecimal;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PpmTest {

    @ParameterizedTest
    @CsvSource({"0, 0.0, ppm", "24.01, 24.1, ppm", "99.91, 100.0, ppm", "640.2, 641, ppm", "1690, 1\u202f690, ppm",
        "9999, 9\u202f999, ppm", "10000, 1.0, %", "209460, 21.0, %"})
    void parts_per_million_are_rounded_up_and_become_per_cent_where_they_are_many(
            BigDecimal ppm, String number, String unit) {
        assertThat(Ppm.of(ppm)).isEqualTo(new Ppm(number, unit));
    }

    @Test
    void a_limit_is_written_as_it_was_set() {
        assertThat(Ppm.limit(new BigDecimal("40.0"))).isEqualTo("limit 40\u00a0ppm");
    }

    @ParameterizedTest
    @CsvSource({"0, 1, false", "2999, 1, false", "3001, 1, true", "-3001, 1, true", "29999, 10, false",
        "30001, 10, true"})
    void a_start_that_was_long_on_its_way_does_not_count(long lateMillis, double speed, boolean late) {
        Moment now = new Moment(Instant.parse("2031-10-14T08:00:00Z"), 10_000_000);
        assertThat(ArcPress.isLate(now.elapsedMillis() - lateMillis, now, speed)).isEqualTo(late);
    }
}

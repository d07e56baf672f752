package brightseam.words;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.Limits;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordsTest {

    private static final ZoneId SHOP = ZoneId.of("Europe/Oslo");
    private static final Instant NOW = Instant.parse("2031-10-14T12:00:00Z");

    @ParameterizedTest
    @CsvSource({"PT0S,0 s", "PT45.9S,45 s", "PT12M5S,12 min 05 s", "PT2H5M59S,2 h 05 min", "PT76H,3 d 4 h",
        "PT-75S,−1 min 15 s"})
    void a_duration_is_said_in_its_two_largest_units(Duration duration, String words) {
        assertThat(Words.duration(duration)).isEqualTo(words);
    }

    @Test
    void a_time_is_clock_time_in_the_shops_zone_with_the_day_where_it_is_another() {
        assertThat(Words.clockTime(NOW.plusSeconds(720), NOW, SHOP)).isEqualTo("14:12");
        assertThat(Words.clockTime(NOW.plus(Duration.ofHours(16)), NOW, SHOP)).isEqualTo("Wed 15 Oct 06:00");
        assertThat(Words.when(NOW.plusSeconds(779), NOW, SHOP)).isEqualTo("14:12, in 12 min");
        assertThat(Words.stamp(NOW, SHOP)).isEqualTo("14 Oct 2031 14:00:00");
    }

    @Test
    void what_is_left_is_rounded_down() {
        assertThat(Words.distance(NOW.plusSeconds(119), NOW)).isEqualTo("in 1 min");
        assertThat(Words.distance(NOW.plusMillis(40_900), NOW)).isEqualTo("in 40 s");
        assertThat(Words.distance(NOW.plusMillis(400), NOW)).isEqualTo("now");
        assertThat(Words.distance(NOW.minusSeconds(200), NOW)).isEqualTo("3 min ago");
        assertThat(Words.distance(NOW.plusSeconds(7500), NOW)).isEqualTo("in 2 h 05 min");
    }

    @Test
    void quantities_keep_their_digits_and_their_unit() {
        assertThat(Words.quantity(new BigDecimal("52.50"), "°C")).isEqualTo("52.50\u00a0°C");
        assertThat(Words.quantity(new BigDecimal("-70"), "°C")).isEqualTo("−70\u00a0°C");
        assertThat(Words.count(1, "piece", "pieces")).isEqualTo("1 piece");
        assertThat(Words.count(12, "piece", "pieces")).isEqualTo("12 pieces");
    }

    @Test
    void limits_are_a_range_or_one_side_or_none() {
        Optional<BigDecimal> low = Optional.of(new BigDecimal("45"));
        Optional<BigDecimal> high = Optional.of(new BigDecimal("60"));
        assertThat(Words.limits(new Limits(low, high), "°C")).isEqualTo("45 to 60\u00a0°C");
        assertThat(Words.limits(new Limits(low, Optional.empty()), "°C")).isEqualTo("at least 45\u00a0°C");
        assertThat(Words.limits(new Limits(Optional.empty(), high), "°C")).isEqualTo("at most 60\u00a0°C");
        assertThat(Words.limits(Limits.none(), "°C")).isEqualTo("no limit");
    }
}

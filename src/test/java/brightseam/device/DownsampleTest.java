package brightseam.device;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class DownsampleTest {

    @Test
    void no_peak_is_lost_and_nothing_is_made_up() {
        for (long seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            Series series = SeriesBlockTest.anything(random);
            long from = series.millis(0);
            long to = series.millis(series.size() - 1);
            int columns = 1 + random.nextInt(200);
            Series drawn = Downsample.of(series, from, to, columns);
            assertThat(drawn.size()).as("seed %d", seed).isLessThanOrEqualTo(4 * columns);
            assertThat(high(drawn)).as("highest, seed %d", seed).isEqualTo(high(series));
            assertThat(low(drawn)).as("lowest, seed %d", seed).isEqualTo(low(series));
            assertThat(drawn.millis(0)).isEqualTo(from);
            assertThat(drawn.millis(drawn.size() - 1)).isEqualTo(to);
            for (int i = 0; i < drawn.size(); i++) {
                Reading one = drawn.at(i);
                assertThat(readingsAt(series, one)).as("seed %d, reading %d", seed, i).contains(one.value());
            }
            assertThat(flags(drawn)).as("flags, seed %d", seed).isEqualTo(flags(series));
        }
    }

    @Test
    void one_reading_far_above_a_day_of_others_is_drawn_at_its_own_time() {
        SeriesBuilder day = new SeriesBuilder(0);
        for (int i = 0; i < 288_000; i++) {
            day.add(i * 100L, i == 123_457 ? 80 : 12.5, 0);
        }
        Series drawn = Downsample.of(day.build(), 0, 28_800_000, 500);
        assertThat(drawn.firstAt(12_345_700)).isLessThan(drawn.firstAt(12_345_701));
        assertThat(drawn.value(drawn.firstAt(12_345_700))).isEqualTo(80);
    }

    @Test
    void few_readings_are_drawn_as_they_are() {
        Series series = Series.of(List.of(new Reading(0, 1), new Reading(50, 3, Set.of(Quality.FROZEN)),
                new Reading(100, 2)));
        assertThat(Downsample.of(series, 0, 100, 100)).isEqualTo(series);
    }

    private static double high(Series series) {
        return values(series).max().orElseThrow();
    }

    private static double low(Series series) {
        return values(series).min().orElseThrow();
    }

    private static DoubleStream values(Series series) {
        return IntStream.range(0, series.size()).mapToDouble(series::value);
    }

    private static int flags(Series series) {
        return IntStream.range(0, series.size()).map(series::flags).reduce(0, (a, b) -> a | b);
    }

    private static List<Double> readingsAt(Series series, Reading one) {
        return values(series.between(one.elapsedMillis(), one.elapsedMillis())).boxed().toList();
    }
}

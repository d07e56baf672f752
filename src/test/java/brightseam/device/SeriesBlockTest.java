package brightseam.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SeriesBlockTest {

    private static Series back(Series series) {
        return SeriesBlock.unpack(SeriesBlock.pack(series));
    }

    @Test
    void what_comes_out_is_what_went_in_bit_for_bit() {
        for (long seed = 0; seed < 400; seed++) {
            Random random = new Random(seed);
            Series series = anything(random);
            assertThat(back(series)).as("seed %d", seed).isEqualTo(series);
        }
    }

    @Test
    void the_ends_of_what_a_double_holds_come_back() {
        Series series = Series.of(List.of(new Reading(0, Double.MAX_VALUE), new Reading(0, Double.MIN_VALUE),
                new Reading(5, -Double.MAX_VALUE), new Reading(Long.MAX_VALUE / 2, 0.1 + 0.2),
                new Reading(Long.MAX_VALUE / 2, 1e-9, Set.of(Quality.values()))));
        assertThat(back(series)).isEqualTo(series);
        assertThat(back(Series.empty())).isEqualTo(Series.empty());
    }

    @Test
    void a_minute_of_a_fast_meter_takes_less_than_two_bytes_a_reading() {
        Random random = new Random(1);
        SeriesBuilder minute = new SeriesBuilder(600);
        for (int i = 0; i < 600; i++) {
            minute.add(3_600_000L + i * 100 + random.nextInt(5), Math.round(120 + 3 * random.nextGaussian()) / 10.0, 0);
        }
        assertThat(SeriesBlock.pack(minute.build()).length).isLessThan(2 * 600);
    }

    @Test
    void bytes_that_are_no_block_are_refused() {
        byte[] good = SeriesBlock.pack(anything(new Random(3)));
        assertThatThrownBy(() -> SeriesBlock.unpack(Arrays.copyOf(good, good.length / 2)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SeriesBlock.unpack(new byte[0])).isInstanceOf(IllegalArgumentException.class);
    }

    /** Decimals of one meter, floats of another, or anything at all; steady, unsteady or jumping times. */
    static Series anything(Random random) {
        SeriesBuilder series = new SeriesBuilder(0);
        int form = random.nextInt(4);
        long time = random.nextInt(1_000_000);
        int flags = 0;
        for (int i = random.nextInt(1500); i >= 0; i--) {
            time += switch (random.nextInt(50)) {
                case 0 -> random.nextInt(10_000_000);
                case 1 -> 0;
                default -> 100 + random.nextInt(7);
            };
            flags = random.nextInt(100) == 0 ? random.nextInt(128) : flags;
            series.add(time, switch (form) {
                case 0 -> random.nextInt(10_000) / 10.0;
                case 1 -> random.nextInt(2_000_000) / 1e6 - 1;
                case 2 -> Double.parseDouble(Float.toString(random.nextFloat() * 50));
                default -> random.nextGaussian() * Math.pow(10, random.nextInt(40) - 20);
            }, flags);
        }
        return series.build();
    }
}

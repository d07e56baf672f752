package brightseam.bath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BathLifeTest {

    private static final Density GRADE_9 = Density.ofGrade("9").orElseThrow();

    @Test
    void a_load_carries_its_area_times_removal_times_density() {
        DissolvedMetal.Load load = DissolvedMetal.Load.of(new WettedArea(1.5, 0.5), new Removal(10), GRADE_9, 0);
        assertThat(load.metalGrams()).isCloseTo(89.6, within(1e-9));
        assertThat(new DissolvedMetal(757, 3).after(load).gramsPerLitre()).isCloseTo(3 + 89.6 / 757, within(1e-12));
    }

    @Test
    void a_bath_counts_loads_area_and_days() {
        DissolvedMetal.Load load = new DissolvedMetal.Load(2, 100, 0);
        assertThat(BathLife.of(new DissolvedMetal(100, 5), load, 15, OptionalDouble.of(4)))
                .isEqualTo(new BathLife.Left(10, 20, OptionalDouble.of(2.5)));
        assertThat(BathLife.of(new DissolvedMetal(100, 5), load, 15.9, OptionalDouble.empty()))
                .isEqualTo(new BathLife.Left(10, 20, OptionalDouble.empty()));
        assertThat(BathLife.of(new DissolvedMetal(100, 14.5), load, 15, OptionalDouble.empty()))
                .isEqualTo(new BathLife.Spent(15.5));
    }

    @Test
    void drag_out_can_keep_a_bath_below_its_limit_for_ever() {
        DissolvedMetal.Load load = new DissolvedMetal.Load(2, 100, 10);
        assertThat(BathLife.of(new DissolvedMetal(100, 5), load, 10, OptionalDouble.empty()))
                .isEqualTo(new BathLife.Endless(10));
        assertThat(BathLife.of(new DissolvedMetal(100, 5), load, 9.9, OptionalDouble.empty()))
                .isInstanceOf(BathLife.Left.class);
        assertThat(BathLife.of(new DissolvedMetal(100, 5), new DissolvedMetal.Load(2, 0, 0), 9, OptionalDouble.empty()))
                .isEqualTo(new BathLife.Endless(5));
    }

    /** Load after load, by hand, until the limit is passed. */
    @Test
    void the_count_is_what_a_bath_filled_load_by_load_shows() {
        Random random = new Random(31);
        int counted = 0;
        for (int round = 0; round < 3000; round++) {
            DissolvedMetal bath = new DissolvedMetal(50 + 1000 * random.nextDouble(), 10 * random.nextDouble());
            double dragOut = random.nextBoolean() ? 0 : bath.volumeLitres() * 0.02 * random.nextDouble();
            DissolvedMetal.Load load = new DissolvedMetal.Load(1, 5 + 200 * random.nextDouble(), dragOut);
            double limit = 8 + 20 * random.nextDouble();
            long loads = 0;
            DissolvedMetal now = bath;
            while (loads < 5000 && now.during(load).gramsPerLitre() <= limit) {
                now = now.after(load);
                loads++;
            }
            BathLife life = BathLife.of(bath, load, limit, OptionalDouble.empty());
            if (loads == 0) {
                assertThat(life).isEqualTo(new BathLife.Spent(bath.during(load).gramsPerLitre()));
            } else if (loads < 5000) {
                assertThat(life).isEqualTo(new BathLife.Left(loads, loads, OptionalDouble.empty()));
                counted++;
            } else {
                assertThat(life).isInstanceOf(BathLife.Endless.class);
            }
        }
        assertThat(counted).isGreaterThan(1000);
    }

    @Test
    void no_metal_is_made_or_lost() {
        Random random = new Random(37);
        for (int round = 0; round < 200; round++) {
            DissolvedMetal bath = new DissolvedMetal(100 + 500 * random.nextDouble(), 5 * random.nextDouble());
            double before = bath.grams();
            double in = 0;
            double out = 0;
            for (int load = 0; load < 50; load++) {
                DissolvedMetal.Load next =
                        new DissolvedMetal.Load(1, 30 * random.nextDouble(), 3 * random.nextDouble());
                in += next.metalGrams();
                out += next.dragOutLitres() * bath.during(next).gramsPerLitre();
                bath = bath.after(next);
            }
            assertThat(bath.grams()).isCloseTo(before + in - out, within(1e-6));
        }
    }

    @Test
    void a_life_too_long_to_matter_is_counted_no_further() {
        BathLife life = BathLife.of(
                new DissolvedMetal(1000, 1), new DissolvedMetal.Load(0, 1e-30, 0), 15, OptionalDouble.empty());
        assertThat(life).isEqualTo(new BathLife.Left(BathLife.LOADS_MAX, 0, OptionalDouble.empty()));
    }

    @Test
    void baths_that_cannot_be_are_refused() {
        assertThatThrownBy(() -> new DissolvedMetal(0, 1)).hasMessageContaining("volume");
        assertThatThrownBy(() -> new DissolvedMetal(10, Double.NaN)).hasMessageContaining("metal");
        assertThatThrownBy(() -> new DissolvedMetal(10, 1).after(new DissolvedMetal.Load(1, 1, 11)))
                .hasMessageContaining("share");
    }
}

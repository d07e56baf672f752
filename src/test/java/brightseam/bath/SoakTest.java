package brightseam.bath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SoakTest {

    private static final Duration MINIMUM = Duration.ofMinutes(1);
    private static final Optional<Duration> MAXIMUM = Optional.of(Duration.ofMinutes(5));

    @Test
    void a_soak_inside_the_hold_takes_off_what_is_wanted() {
        assertThat(soak(4, 8, 2)).isEqualTo(
                new Soak.Possible(Duration.ofMinutes(2), Optional.of(Duration.ofMinutes(4)), new Removal(4)));
    }

    @Test
    void the_hold_bounds_what_the_removal_leaves_open() {
        assertThat(soak(1, 50, 2)).isEqualTo(new Soak.Possible(MINIMUM, MAXIMUM, new Removal(2)));
        assertThat(Soak.within(MINIMUM, Optional.empty(), wanted(1, Double.NaN), new EtchRate(2)))
                .isEqualTo(new Soak.Possible(MINIMUM, Optional.empty(), new Removal(2)));
    }

    @Test
    void a_slow_bath_says_how_much_it_takes_off_by_the_maximum() {
        assertThat(soak(11, 20, 2)).isEqualTo(new Soak.TooSlow(new Removal(10), MAXIMUM.orElseThrow()));
        assertThat(soak(1, 2, 0)).isEqualTo(new Soak.TooSlow(new Removal(0), MAXIMUM.orElseThrow()));
        assertThat(Soak.within(MINIMUM, Optional.empty(), wanted(1, 2), new EtchRate(0)))
                .isEqualTo(new Soak.NeverEnough());
    }

    @Test
    void a_fast_bath_says_how_much_it_takes_off_by_the_minimum() {
        assertThat(soak(1, 9, 10)).isEqualTo(new Soak.TooFast(new Removal(10), MINIMUM));
        assertThat(soak(0, 0, 0)).isEqualTo(new Soak.Possible(MINIMUM, MAXIMUM, new Removal(0)));
    }

    /** Every second of the hold is tried, and the answer is true exactly where it does what is wanted. */
    @Test
    void the_answer_is_what_trying_every_second_finds() {
        Random random = new Random(23);
        for (int round = 0; round < 2000; round++) {
            Duration minimum = Duration.ofSeconds(random.nextInt(200));
            Duration maximum = minimum.plusSeconds(1 + random.nextInt(300));
            double least = 10 * random.nextDouble();
            double most = least + 5 * random.nextDouble();
            EtchRate rate = new EtchRate(5 * random.nextDouble());
            Soak answer = Soak.within(minimum, Optional.of(maximum), wanted(least, most), rate);
            for (Duration tried = minimum; tried.compareTo(maximum) <= 0; tried = tried.plusSeconds(1)) {
                double removed = rate.in(tried).micrometres();
                boolean inside = answer instanceof Soak.Possible possible
                        && tried.compareTo(possible.shortest()) >= 0
                        && tried.compareTo(possible.longest().orElseThrow()) <= 0;
                assertThat(inside).as("%s after %s at %s", answer, tried, rate)
                        .isEqualTo(removed >= least && removed <= most);
            }
        }
    }

    @Test
    void a_faster_bath_never_needs_longer() {
        Random random = new Random(29);
        for (int round = 0; round < 1000; round++) {
            double rate = 1 + random.nextDouble();
            Soak slow = Soak.within(Duration.ZERO, Optional.empty(), wanted(3, Double.NaN), new EtchRate(rate));
            Soak fast = Soak.within(Duration.ZERO, Optional.empty(), wanted(3, Double.NaN), new EtchRate(rate * 1.1));
            assertThat(((Soak.Possible) fast).shortest()).isLessThan(((Soak.Possible) slow).shortest());
            assertThat(((Soak.Possible) slow).leastRemoval().micrometres()).isCloseTo(3, within(1e-4));
        }
    }

    @Test
    void holds_and_wishes_that_cannot_be_are_refused() {
        assertThatThrownBy(() -> wanted(2, 1)).hasMessageContaining("most removal");
        assertThatThrownBy(() -> Soak.within(MINIMUM, Optional.of(Duration.ZERO), wanted(1, 2), new EtchRate(1)))
                .hasMessageContaining("maximum");
    }

    private static Soak soak(double least, double most, double rate) {
        return Soak.within(MINIMUM, MAXIMUM, wanted(least, most), new EtchRate(rate));
    }

    private static Soak.Wanted wanted(double least, double most) {
        return new Soak.Wanted(new Removal(least), Optional.of(most).filter(m -> !m.isNaN()).map(Removal::new));
    }
}

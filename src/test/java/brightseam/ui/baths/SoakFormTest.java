package brightseam.ui.baths;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.bath.CouponLoss;
import brightseam.bath.Density;
import brightseam.bath.Removal;
import brightseam.bath.Soak;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A coupon of grade 9, 25 cm², in the bath for five minutes: each 11.2 mg lost is a micrometre. */
class SoakFormTest {

    private static final List<Duration> HOLD = List.of(Duration.ofMinutes(1), Duration.ofMinutes(5));

    @Test
    void a_soak_inside_the_hold_is_named_with_what_it_takes_off() {
        assertThat(words(12.0560, 3, 5)).isEqualTo("The coupon lost 5 µm, 1 µm/min (0.0394 mil/min). "
                + "Soak 3 min to 5 min; the shortest takes off 3 µm.");
    }

    @Test
    void a_bath_that_is_too_slow_or_too_fast_is_told_with_the_way_out() {
        assertThat(words(12.0112, 3, 5)).contains("Too slow: even 5 min takes off only 1 µm.");
        assertThat(words(12.5600, 3, 5)).contains("Too fast: 1 min takes off 10 µm already.");
    }

    private static String words(double before, double least, double most) {
        return SoakForm.words(new CouponLoss(before, 12.0, 25, Density.ofGrade("9").orElseThrow()),
                Duration.ofMinutes(5), HOLD,
                new Soak.Wanted(new Removal(least), Optional.of(new Removal(most))));
    }
}

package brightseam.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.people.PinLife.Standing;
import java.time.Duration;
import org.junit.jupiter.api.Test;

class PinLifeTest {

    private static final PinLife LIFE = new PinLife(365, 14);

    @Test
    void a_pin_is_good_then_ends_soon_then_has_expired_to_the_second() {
        assertThat(after(Duration.ofDays(351).minusSeconds(1))).isEqualTo(Standing.GOOD);
        assertThat(after(Duration.ofDays(351))).isEqualTo(Standing.ENDS_SOON);
        assertThat(after(Duration.ofDays(365).minusSeconds(1))).isEqualTo(Standing.ENDS_SOON);
        assertThat(after(Duration.ofDays(365))).isEqualTo(Standing.EXPIRED);
    }

    @Test
    void with_no_days_set_no_pin_ever_ends() {
        PinLife endless = new PinLife(0, 14);
        assertThat(endless.standing(Staff.NOON, false, Staff.NOON.plus(Duration.ofDays(9_000))))
                .isEqualTo(Standing.GOOD);
        assertThat(endless.endOf(Staff.NOON)).isEmpty();
    }

    @Test
    void a_first_pin_is_a_first_pin_whatever_its_age() {
        assertThat(LIFE.standing(Staff.NOON, true, Staff.NOON)).isEqualTo(Standing.FIRST);
        assertThat(LIFE.standing(Staff.NOON, true, Staff.NOON.plus(Duration.ofDays(900)))).isEqualTo(Standing.FIRST);
    }

    @Test
    void days_below_zero_are_refused() {
        assertThatThrownBy(() -> new PinLife(-1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new PinLife(1, -1)).isInstanceOf(IllegalArgumentException.class);
    }

    private static Standing after(Duration age) {
        return LIFE.standing(Staff.NOON, false, Staff.NOON.plus(age));
    }
}

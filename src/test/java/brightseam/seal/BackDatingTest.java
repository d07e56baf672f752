package brightseam.seal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;

class BackDatingTest {

    private static final Instant SEALED = Instant.parse("2031-03-04T08:00:00Z");

    @Test
    void what_says_that_it_happened_after_the_head_without_it_is_not_dated_back() {
        assertThat(BackDating.before(SEALED, SEALED.plusSeconds(1))).isEmpty();
    }

    @Test
    void a_minute_is_let_pass_and_a_second_more_is_not() {
        assertThat(BackDating.before(SEALED, SEALED.minusSeconds(60))).isEmpty();
        assertThat(BackDating.before(SEALED, SEALED.minusSeconds(61))).contains(Duration.ofSeconds(61));
    }

    @Test
    void hours_are_told_as_they_are() {
        assertThat(BackDating.before(SEALED, SEALED.minus(Duration.ofHours(3)))).contains(Duration.ofHours(3));
    }
}

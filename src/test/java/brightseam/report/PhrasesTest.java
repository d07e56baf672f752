package brightseam.report;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.procedure.Hold;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PhrasesTest {

    @Test
    void pieces_are_said_in_runs() {
        assertThat(Phrases.pieces(List.of(3))).isEqualTo("piece 3");
        assertThat(Phrases.pieces(List.of(2, 1))).isEqualTo("pieces 1, 2");
        assertThat(Phrases.pieces(List.of(1, 2, 3, 4, 6))).isEqualTo("pieces 1 to 4, 6");
        assertThat(Phrases.pieces(List.of())).isEqualTo("no piece");
    }

    @Test
    void a_hold_says_which_of_its_limits_it_has() {
        Duration minute = Duration.ofMinutes(1);
        assertThat(Phrases.limits(new Hold(minute, Optional.of(minute.multipliedBy(5))))).isEqualTo("1 min to 5 min");
        assertThat(Phrases.limits(new Hold(minute, Optional.empty()))).isEqualTo("at least 1 min");
        assertThat(Phrases.limits(new Hold(Duration.ZERO, Optional.of(minute)))).isEqualTo("at most 1 min");
    }
}

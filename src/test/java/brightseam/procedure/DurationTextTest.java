package brightseam.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

class DurationTextTest {

    @Test
    void a_duration_is_a_number_with_its_unit() {
        assertEquals(Duration.ofSeconds(90), DurationText.parse("90 s"));
        assertEquals(Duration.ofMinutes(15), DurationText.parse("15 min"));
        assertEquals(Duration.ofHours(24), DurationText.parse("24 h"));
        assertEquals(Duration.ofDays(7), DurationText.parse("7 d"));
    }

    @Test
    void a_bare_number_and_any_other_form_are_refused() {
        for (String text : List.of("15", "0 s", "15min", "-1 h", "1.5 h", "15 minutes", "", "PT15M", "999999 s")) {
            assertThrows(IllegalArgumentException.class, () -> DurationText.parse(text), text);
        }
    }

    @Test
    void it_is_printed_in_the_largest_unit_that_fits() {
        assertEquals("90 s", DurationText.print(Duration.ofSeconds(90)));
        assertEquals("5 min", DurationText.print(Duration.ofSeconds(300)));
        assertEquals("48 h", DurationText.print(Duration.ofHours(48)));
        assertEquals("7 d", DurationText.print(Duration.ofDays(7)));
        assertEquals("0 s", DurationText.print(Duration.ZERO));
    }
}

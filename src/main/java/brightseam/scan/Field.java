package brightseam.scan;

import java.time.LocalDate;
import java.util.Optional;

/**
 * One field of a supplier's label.
 *
 * @param identifier the data identifier or application identifier, such as {@code 1T} or {@code 10}
 * @param value what stands after it; plain text from outside, to be escaped wherever it is shown
 * @param meaning what it says
 * @param date the day that it names, where it is a date in a form that the standard fixes
 */
public record Field(String identifier, String value, Meaning meaning, Optional<LocalDate> date) {

    /** A field that is no date. */
    static Field text(String identifier, String value, Meaning meaning) {
        return new Field(identifier, value, meaning, Optional.empty());
    }
}

package brightseam.people;

import brightseam.kernel.Syntax;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Objects;

/**
 * What a person has been shown to be able to do, for a time.
 *
 * @param word the station class or step kind it covers, such as {@code pickle-tank} or {@code weld}
 * @param until the first instant at which it no longer holds
 */
public record Qualification(String word, Instant until) {

    /** Refuses a word that is no slug and a missing end. */
    public Qualification {
        Syntax.slug("qualification", word);
        Objects.requireNonNull(until, "until");
    }

    /** Holds through the whole of {@code lastDay} on the calendar of {@code zone}. */
    public static Qualification throughDay(String word, LocalDate lastDay, ZoneId zone) {
        return new Qualification(word, lastDay.plusDays(1).atStartOfDay(zone).toInstant());
    }

    /** Whether it covers {@code instant}. */
    public boolean holdsAt(Instant instant) {
        return instant.isBefore(until);
    }
}

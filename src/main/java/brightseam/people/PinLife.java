package brightseam.people;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * How long a PIN serves.
 *
 * @param daysMax days from its setting to its end; 0 where it does not end
 * @param warningDays how many days before that the person is told
 */
public record PinLife(int daysMax, int warningDays) {

    /** So many of a person's last PINs are not taken again, the one in use among them. Common practice. */
    public static final int LAST_ONES = 5;

    /** What a PIN is good for. */
    public enum Standing {
        /** For everything. */
        GOOD,
        /** For everything, and it ends soon. */
        ENDS_SOON,
        /** For choosing another one: it has lived too long. */
        EXPIRED,
        /** For choosing another one: somebody else chose it. */
        FIRST
    }

    /** Refuses negative numbers. */
    public PinLife {
        if (daysMax < 0 || warningDays < 0) {
            throw new IllegalArgumentException("days of a PIN: 0 or more");
        }
    }

    /** When a PIN that was set at {@code setAt} ends; empty where none does. */
    public Optional<Instant> endOf(Instant setAt) {
        return daysMax == 0 ? Optional.empty() : Optional.of(setAt.plus(Duration.ofDays(daysMax)));
    }

    /**
     * What a PIN is good for at {@code now}.
     *
     * @param first whether somebody else than its owner chose it
     */
    public Standing standing(Instant setAt, boolean first, Instant now) {
        if (first) {
            return Standing.FIRST;
        }
        Optional<Instant> end = endOf(setAt);
        if (end.filter(last -> !now.isBefore(last)).isPresent()) {
            return Standing.EXPIRED;
        }
        return end.filter(last -> !now.isBefore(last.minus(Duration.ofDays(warningDays)))).isPresent()
                ? Standing.ENDS_SOON : Standing.GOOD;
    }
}

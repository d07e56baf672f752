package brightseam.scan;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;

/**
 * Six-digit dates YYMMDD of GS1 element strings (GS1 General Specifications 3.4 and 7.12, from memory).
 *
 * <p>The century: a year 51 or more ahead of this one lies in the last century, one 50 or more behind in the next.
 * Day 00 leaves the day unsaid and counts as the last day of the month.
 */
final class Gs1Date {

    private Gs1Date() {}

    /** The day that {@code digits} name as seen from {@code today}; empty where no calendar has it. */
    static Optional<LocalDate> read(String digits, LocalDate today) {
        if (digits.length() != 6 || !Gs1CheckDigit.isDigits(digits)) {
            return Optional.empty();
        }
        int day = Integer.parseInt(digits.substring(4));
        try {
            YearMonth month = YearMonth.of(
                    year(Integer.parseInt(digits.substring(0, 2)), today.getYear()),
                    Integer.parseInt(digits.substring(2, 4)));
            return Optional.of(day == 0 ? month.atEndOfMonth() : month.atDay(day));
        } catch (DateTimeException notInTheCalendar) {
            return Optional.empty();
        }
    }

    private static int year(int twoDigits, int thisYear) {
        int ahead = twoDigits - thisYear % 100;
        int century = thisYear - thisYear % 100;
        if (ahead >= 51) {
            return century - 100 + twoDigits;
        }
        return ahead <= -50 ? century + 100 + twoDigits : century + twoDigits;
    }
}

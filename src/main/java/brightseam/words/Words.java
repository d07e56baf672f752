package brightseam.words;

import brightseam.kernel.Limits;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Durations, times, quantities and limits as the shop says them; units always. */
public final class Words {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("d MMM yyyy HH:mm:ss", Locale.ENGLISH);
    private static final String NO_BREAK = "\u00a0";

    private Words() {}

    /** {@code 45 s}, {@code 12 min 05 s}, {@code 12 min}, {@code 2 h 05 min}, {@code 3 d 4 h}; rounded down. */
    public static String duration(Duration duration) {
        String sign = duration.isNegative() ? "−" : "";
        Duration length = duration.abs();
        if (length.toDays() > 0) {
            return sign + length.toDays() + " d" + (length.toHoursPart() > 0 ? " " + length.toHoursPart() + " h" : "");
        }
        if (length.toHours() > 0) {
            return sign + length.toHours() + " h"
                    + (length.toMinutesPart() > 0 ? " %02d min".formatted(length.toMinutesPart()) : "");
        }
        if (length.toMinutes() > 0) {
            return sign + length.toMinutes() + " min"
                    + (length.toSecondsPart() > 0 ? " %02d s".formatted(length.toSecondsPart()) : "");
        }
        return sign + length.toSeconds() + " s";
    }

    /** {@code 14:05} today; {@code Tue 14 Oct 06:10} on another day than {@code now}'s. */
    public static String clockTime(Instant at, Instant now, ZoneId zone) {
        ZonedDateTime there = at.atZone(zone);
        LocalDate today = now.atZone(zone).toLocalDate();
        return there.format(there.toLocalDate().equals(today) ? CLOCK : DAY);
    }

    /** {@code in 12 min}, {@code in 40 s}, {@code now}, {@code 3 min ago}; what is left is rounded down, to be safe. */
    public static String distance(Instant at, Instant now) {
        Duration left = Duration.between(now, at);
        if (left.abs().toSeconds() == 0) {
            return "now";
        }
        return left.isNegative() ? coarse(left.abs()) + " ago" : "in " + coarse(left);
    }

    /** Both: {@code 14:05, in 12 min}. */
    public static String when(Instant at, Instant now, ZoneId zone) {
        return clockTime(at, now, zone) + ", " + distance(at, now);
    }

    /** For the record: {@code 14 Oct 2031 06:10:09}. */
    public static String stamp(Instant at, ZoneId zone) {
        return at.atZone(zone).format(STAMP);
    }

    /** {@code 52.5 °C}, {@code 5 %}; the number as it was written down, with no break before the unit. */
    public static String quantity(BigDecimal value, String symbol) {
        String number = value.toPlainString().replace('-', '−');
        return symbol.isEmpty() ? number : number + NO_BREAK + symbol;
    }

    /** {@code 45 to 60 °C}, {@code at least 1 MΩ·cm}, {@code at most 5 ppm}, {@code no limit}. */
    public static String limits(Limits limits, String symbol) {
        if (limits.minimum().isPresent() && limits.maximum().isPresent()) {
            return quantity(limits.minimum().get(), "") + " to " + quantity(limits.maximum().get(), symbol);
        }
        return limits.minimum().map(low -> "at least " + quantity(low, symbol))
                .or(() -> limits.maximum().map(high -> "at most " + quantity(high, symbol)))
                .orElse("no limit");
    }

    /** {@code 1 piece}, {@code 12 pieces}. */
    public static String count(long number, String one, String many) {
        return number + " " + (number == 1 ? one : many);
    }

    /** A speed or factor without needless decimals: {@code 10}, {@code 2.5}. */
    public static String plain(double factor) {
        return BigDecimal.valueOf(factor).stripTrailingZeros().toPlainString();
    }

    private static String coarse(Duration length) {
        if (length.toDays() > 0) {
            return length.toDays() + " d " + length.toHoursPart() + " h";
        }
        if (length.toHours() > 0) {
            return "%d h %02d min".formatted(length.toHours(), length.toMinutesPart());
        }
        return length.toMinutes() > 0 ? length.toMinutes() + " min" : length.toSeconds() + " s";
    }
}

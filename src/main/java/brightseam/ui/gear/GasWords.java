package brightseam.ui.gear;

import brightseam.chamber.ArgonForm;
import brightseam.chamber.ArgonReading;
import brightseam.chamber.LockMethod;
import brightseam.words.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;

/** Gas, its vessels and what was read off them, in words. */
final class GasWords {

    private static final BigDecimal LITRES_PER_CUBIC_METRE = new BigDecimal("1000");

    private GasWords() {}

    /** Standard litres as {@code 9.4 m³}. */
    static String cubicMetres(BigDecimal standardLitres) {
        return Words.quantity(standardLitres.divide(LITRES_PER_CUBIC_METRE, 1, RoundingMode.HALF_UP), "m³");
    }

    /** Standard litres as {@code 9.4 m³}. */
    static String cubicMetres(double standardLitres) {
        return cubicMetres(BigDecimal.valueOf(standardLitres));
    }

    /** A share of one as {@code 72 %}. */
    static String percent(double share) {
        return Words.quantity(BigDecimal.valueOf(100 * share).setScale(0, RoundingMode.HALF_UP), "%");
    }

    /** {@code cylinder}, {@code bundle of cylinders}, {@code dewar of liquid}. */
    static String form(ArgonForm form) {
        return switch (form) {
            case CYLINDER -> "cylinder";
            case BUNDLE -> "bundle of cylinders";
            case DEWAR -> "dewar of liquid";
        };
    }

    /** {@code 148 bar at 20.5 °C, read 08:12} or {@code 72 % full, by meter G-0509 at 08:12}. */
    static String reading(ArgonReading reading, Instant now, ZoneId zone) {
        String value = reading.levelPercent().map(level -> plain(level, "%") + " full")
                .orElseGet(() -> plain(reading.pressureBarGauge().orElseThrow(), "bar") + " at "
                        + plain(reading.temperatureCelsius().orElseThrow(), "°C"));
        String at = Words.clockTime(reading.at().wall(), now, zone);
        return value + reading.meter().map(meter -> ", by meter " + meter + " at " + at).orElse(", read " + at);
    }

    /** How a lock is purged. */
    static String method(LockMethod method) {
        return switch (method.kind()) {
            case SWEEP -> "argon streams through, at least " + Words.duration(method.leastTime().orElseThrow());
            case VACUUM_CYCLES -> "pumped down to "
                    + Words.quantity(method.lowPressureBarAbsolute().orElseThrow(), "bar absolute")
                    + " and filled, again and again";
        };
    }

    /** A number without needless zeros. */
    static String plain(BigDecimal value, String symbol) {
        BigDecimal short1 = value.stripTrailingZeros();
        return Words.quantity(short1.scale() < 0 ? short1.setScale(0) : short1, symbol);
    }

    /** A time that may have been given in minutes or hours; nothing as {@code 0 s}. */
    static String time(Duration time) {
        return Words.duration(time);
    }
}

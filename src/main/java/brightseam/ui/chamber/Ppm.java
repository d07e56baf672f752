package brightseam.ui.chamber;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * Parts per million as the screens write them: from a hundredth of the air on in per cent, so that the digits stay few.
 *
 * @param number the number without its unit
 * @param unit ppm or %
 */
record Ppm(String number, String unit) {

    private static final BigDecimal PERCENT_FROM = BigDecimal.valueOf(10_000);
    private static final BigDecimal WHOLE_FROM = BigDecimal.valueOf(100);
    private static final char THIN = '\u202f';

    /** {@code 24.1 ppm}, {@code 640 ppm}, {@code 1 690 ppm}, {@code 2.1 %}. Rounded up, never in favour. */
    static Ppm of(BigDecimal ppm) {
        if (ppm.compareTo(PERCENT_FROM) >= 0) {
            return new Ppm(ppm.divide(PERCENT_FROM, 1, RoundingMode.CEILING).toPlainString(), "%");
        }
        if (ppm.compareTo(WHOLE_FROM) >= 0) {
            long whole = ppm.setScale(0, RoundingMode.CEILING).longValueExact();
            return new Ppm(String.format(Locale.ROOT, "%,d", whole).replace(',', THIN), "ppm");
        }
        return new Ppm(ppm.setScale(1, RoundingMode.CEILING).toPlainString(), "ppm");
    }

    /** A limit, as it was written down. */
    static String limit(BigDecimal ppm) {
        return "limit " + ppm.stripTrailingZeros().toPlainString() + "\u00a0ppm";
    }

    /** {@code at most 40 ppm}, for a sentence. */
    static String atMost(BigDecimal ppm) {
        return "at most " + ppm.stripTrailingZeros().toPlainString() + "\u00a0ppm";
    }

    @Override
    public String toString() {
        return number + "\u00a0" + unit;
    }
}

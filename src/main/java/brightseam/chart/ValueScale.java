package brightseam.chart;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;

/**
 * The upright scale: from zero, or by powers of ten where what is shown spans them.
 *
 * @param foot and {@code head}: its ends in drawing units
 */
record ValueScale(boolean logarithmic, double low, double high, double foot, double head) {

    private static final List<Double> LADDER = List.of(1.0, 2.0, 5.0);
    private static final double ROOM = 1.12;
    private static final int DIGITS = 4;
    private static final double TICKS_MAX = 6;
    /** From this ratio of highest to lowest on, ticks stand at powers of ten alone. */
    private static final double DECADES_ALONE = 900;
    /** Nothing is drawn below this; a meter that says zero says that it sees nothing. */
    private static final double SMALLEST = 0.1;

    /** By powers of ten over all of {@code values}. */
    static ValueScale logarithmic(DoubleStream values, double foot, double head) {
        double[] seen = values.filter(value -> value > 0).map(value -> Math.max(SMALLEST, value)).sorted().toArray();
        double least = seen.length == 0 ? 1 : seen[0];
        double most = seen.length == 0 ? 10 : seen[seen.length - 1];
        double low = rung(least / ROOM, false);
        return new ValueScale(true, low, Math.max(rung(most * ROOM, true), low * 10), foot, head);
    }

    /** From zero over all of {@code values}. */
    static ValueScale fromZero(DoubleStream values, double foot, double head) {
        double most = Math.max(1e-6, values.max().orElse(1)) * ROOM;
        double step = rung(most / TICKS_MAX, true);
        return new ValueScale(false, 0, Math.ceil(most / step) * step, foot, head);
    }

    /** Where {@code value} lies, kept inside the scale. */
    double at(double value) {
        double inside = Math.clamp(value, low, high);
        double share = logarithmic ? Math.log(inside / low) / Math.log(high / low) : (inside - low) / (high - low);
        return foot + share * (head - foot);
    }

    /** Values that carry a number. */
    List<Double> ticks() {
        List<Double> ticks = new ArrayList<>();
        if (!logarithmic) {
            double step = rung(high / ROOM / TICKS_MAX, true);
            for (int i = 0; i * step <= high * 1.0001; i++) {
                ticks.add(i * step);
            }
            return ticks;
        }
        for (int power = (int) Math.floor(Math.log10(low)); power <= Math.log10(high) + 1; power++) {
            for (double rung : high / low > DECADES_ALONE ? List.of(1.0) : LADDER) {
                double value = rung * Math.pow(10, power);
                if (value >= low * 0.999 && value <= high * 1.001) {
                    ticks.add(value);
                }
            }
        }
        return ticks;
    }

    /** {@code value} as it stands beside its tick: thousands apart, four digits that say something. */
    static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(DIGITS)).stripTrailingZeros();
        String plain = rounded.toPlainString();
        return Math.abs(value) < 1000 ? plain.replace('-', '−')
                : String.format(Locale.ROOT, "%,d", rounded.longValue()).replace(',', '\u00a0').replace('-', '−');
    }

    private static double rung(double value, boolean up) {
        double power = Math.pow(10, Math.floor(Math.log10(value)));
        List<Double> rungs = List.of(1.0, 2.0, 5.0, 10.0);
        return power * (up ? rungs.stream().filter(rung -> rung * power >= value * 0.9999).findFirst().orElse(10.0)
                : rungs.stream().filter(rung -> rung * power <= value * 1.0001).reduce((a, b) -> b).orElse(1.0));
    }
}

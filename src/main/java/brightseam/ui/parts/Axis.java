package brightseam.ui.parts;

import java.util.List;
import java.util.stream.Stream;

/**
 * A straight axis from {@code low} to {@code high} over the width of a drawing, with ticks at round numbers.
 *
 * @param left and {@code right}: its ends in drawing units
 */
record Axis(double low, double high, double left, double right, double step) {

    private static final int TICKS_MAX = 8;

    /** An axis that holds {@code low} and {@code high}, with about eight ticks at 1, 2 or 5 times a power of ten. */
    static Axis decimal(double low, double high, double left, double right) {
        double raw = (high - low) / TICKS_MAX;
        double power = Math.pow(10, Math.floor(Math.log10(raw)));
        double step = Stream.of(1, 2, 5, 10).map(times -> times * power).filter(fits -> fits >= raw).findFirst()
                .orElse(10 * power);
        return new Axis(Math.floor(low / step) * step, Math.ceil(high / step) * step, left, right, step);
    }

    /** An axis from zero over {@code high} seconds, ticks at round seconds, minutes or hours. */
    static Axis seconds(double high, double left, double right) {
        double raw = high / TICKS_MAX;
        double step = Stream.of(1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 14400, 28800, 86400)
                .map(Integer::doubleValue).filter(fits -> fits >= raw).findFirst().orElse(Math.ceil(raw));
        return new Axis(0, Math.ceil(high / step) * step, left, right, step);
    }

    /** Where {@code value} lies, kept inside the axis. */
    double at(double value) {
        double share = (Math.clamp(value, low, high) - low) / (high - low);
        return left + share * (right - left);
    }

    /** The ticks from low to high. */
    List<Double> ticks() {
        return Stream.iterate(0, count -> count + 1).limit(Math.round((high - low) / step) + 1)
                .map(count -> low + count * step).toList();
    }
}

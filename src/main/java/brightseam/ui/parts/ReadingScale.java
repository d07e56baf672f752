package brightseam.ui.parts;

import brightseam.kernel.Limits;
import brightseam.words.Words;
import java.math.BigDecimal;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.Stream;

/**
 * A reading on a scale against its limits. What is out of limits is striped; the reading is a diamond, filled where it
 * is in order and hollow where it is not.
 *
 * @param label what was read
 * @param unit its symbol
 * @param limits what is in order
 * @param value what was read
 */
public record ReadingScale(String label, String unit, Limits limits, BigDecimal value) implements Drawing {

    private static final int WIDTH = 900;
    private static final int HEIGHT = 150;
    private static final double LEFT = 30;
    private static final double RIGHT = 800;
    private static final double EDGE = 895;
    private static final double TOP = 66;
    private static final double THICK = 26;

    @Override
    public String words() {
        return label + ": " + Words.quantity(value, unit) + ", "
                + (limits.admits(value) ? "in order" : "not in order") + " (" + Words.limits(limits, unit) + ").";
    }

    @Override
    public String svg() {
        Axis axis = axis();
        Pen pen = new Pen(WIDTH, HEIGHT, words());
        pen.box(LEFT, TOP, RIGHT - LEFT, THICK, "#fff");
        limits.minimum().ifPresent(low -> {
            double x = axis.at(low.doubleValue());
            pen.stripes(LEFT, TOP, x - LEFT, THICK);
            limit(pen, x, "min " + Words.quantity(low, unit));
        });
        limits.maximum().ifPresent(high -> {
            double x = axis.at(high.doubleValue());
            pen.stripes(x, TOP, RIGHT - x, THICK);
            limit(pen, x, "max " + Words.quantity(high, unit));
        });
        double x = axis.at(value.doubleValue());
        pen.diamond(x, TOP + THICK / 2, 17, limits.admits(value) ? "#000" : "#fff");
        pen.line(x, 38, x, TOP - 6, 2, true).clearLabel(x, 50, limitsAt(axis), Words.quantity(value, unit));
        ticks(pen, axis);
        return pen.done();
    }

    private List<Double> limitsAt(Axis axis) {
        return Stream.concat(limits.minimum().stream(), limits.maximum().stream())
                .map(limit -> axis.at(limit.doubleValue())).toList();
    }

    /** From zero where the numbers lie near it, else round about them: it shows a place, not a length. */
    private Axis axis() {
        DoubleSummaryStatistics seen = Stream.of(limits.minimum().stream(), limits.maximum().stream(),
                        Stream.of(value)).flatMap(numbers -> numbers).mapToDouble(BigDecimal::doubleValue)
                .summaryStatistics();
        double spread = Math.max(seen.getMax() - seen.getMin(), Math.abs(seen.getMax()) * 0.2);
        double low = seen.getMin() - Math.max(spread * 0.25, 1e-6);
        double high = seen.getMax() + Math.max(spread * 0.25, 1e-6);
        boolean nearZero = seen.getMin() >= 0 && low <= spread;
        return Axis.decimal(nearZero ? 0 : low, high, LEFT, RIGHT);
    }

    private static void limit(Pen pen, double x, String words) {
        pen.line(x, 8, x, TOP + THICK + 6, 3, false);
        pen.label(x, 20, EDGE, false, words);
    }

    private void ticks(Pen pen, Axis axis) {
        double y = TOP + THICK + 12;
        pen.line(LEFT, y, RIGHT, y, 2, false);
        for (double tick : axis.ticks()) {
            pen.line(axis.at(tick), y, axis.at(tick), y + 7, 2, false);
            String number = BigDecimal.valueOf(tick).round(new java.math.MathContext(6)).stripTrailingZeros()
                    .toPlainString().replace('-', '−');
            pen.text(axis.at(tick), y + 26, 15, "middle", false, number);
        }
        pen.text(EDGE, y + 26, 15, "end", true, unit);
    }
}

package brightseam.ui.parts;

import brightseam.kernel.Limits;
import brightseam.words.Words;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Readings of one quantity over days against its limits: a diamond each, filled inside the limits of its day and hollow
 * outside, joined by a line. The limits drawn are those that hold now.
 *
 * @param label what was read
 * @param unit its symbol
 * @param limits what is in order now
 * @param points at least one, oldest first
 * @param marks what happened meanwhile, such as an addition
 * @param zone the shop's zone, for the days on the axis
 */
public record Trend(String label, String unit, Limits limits, List<Point> points, List<Mark> marks, ZoneId zone)
        implements Drawing {

    private static final int WIDTH = 900;
    private static final int HEIGHT = 290;
    private static final double LEFT = 76;
    private static final double RIGHT = 742;
    private static final double TOP = 34;
    private static final double BOTTOM = 224;
    private static final int DAY_TICKS_MAX = 9;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

    /** One reading; {@code inOrder} by the limits of its day. */
    public record Point(Instant at, BigDecimal value, boolean inOrder) {}

    /** Something that happened, with a word or sign that stands above its line. */
    public record Mark(Instant at, String word) {}

    /** Copies the lists and refuses a trend of nothing. */
    public Trend {
        points = List.copyOf(points);
        marks = List.copyOf(marks);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("a trend of no points");
        }
    }

    @Override
    public String words() {
        Point last = points.getLast();
        long outside = points.stream().filter(point -> !point.inOrder()).count();
        return label + ", " + Words.count(points.size(), "reading", "readings") + " from "
                + DAY.format(day(points.getFirst().at())) + " to " + DAY.format(day(last.at())) + ": last "
                + Words.quantity(last.value(), unit) + ", "
                + (limits.admits(last.value()) ? "in order" : "not in order")
                + " (" + Words.limits(limits, unit) + "); " + (outside == 0 ? "none" : outside) + " out of limits.";
    }

    @Override
    public String svg() {
        Pen pen = new Pen(WIDTH, HEIGHT, words());
        Axis up = upright();
        frame(pen, up);
        days(pen);
        marks.forEach(mark -> mark(pen, mark));
        limits.minimum().ifPresent(low -> limit(pen, up, low, "min "));
        limits.maximum().ifPresent(high -> limit(pen, up, high, "max "));
        for (int i = 1; i < points.size(); i++) {
            pen.line(across(points.get(i - 1).at()), height(up, points.get(i - 1)), across(points.get(i).at()),
                    height(up, points.get(i)), 1.5, false);
        }
        points.forEach(point -> pen.diamond(
                across(point.at()), height(up, point), 6, point.inOrder() ? "#000" : "#fff"));
        return pen.done();
    }

    /** From zero where the numbers lie near it, else round about them. */
    private Axis upright() {
        List<Double> seen = Stream.of(limits.minimum().stream(), limits.maximum().stream(),
                        points.stream().map(Point::value)).flatMap(numbers -> numbers)
                .map(BigDecimal::doubleValue).sorted().toList();
        double spread = Math.max(seen.getLast() - seen.getFirst(), Math.max(Math.abs(seen.getLast()) * 0.2, 1e-6));
        boolean nearZero = seen.getFirst() >= 0 && seen.getFirst() <= 2 * spread;
        double low = nearZero ? 0 : seen.getFirst() - 0.15 * spread;
        return Axis.decimal(low, seen.getLast() + 0.1 * spread, BOTTOM, TOP);
    }

    private void frame(Pen pen, Axis up) {
        pen.line(LEFT, TOP, LEFT, BOTTOM, 2, false).line(LEFT, BOTTOM, RIGHT, BOTTOM, 2, false);
        for (double tick : up.ticks()) {
            String number = BigDecimal.valueOf(tick).round(new MathContext(6)).stripTrailingZeros().toPlainString()
                    .replace('-', '−');
            pen.line(LEFT - 6, up.at(tick), LEFT, up.at(tick), 2, false);
            pen.text(LEFT - 10, up.at(tick) + 5, 15, "end", false, number);
        }
        pen.text(6, 18, 15, "start", true, unit.isEmpty() ? label : unit);
    }

    private void days(Pen pen) {
        long days = ChronoUnit.DAYS.between(firstDay(), lastDay());
        int step = Stream.of(1, 2, 5, 7, 14, 28, 56, 91, 182).filter(width -> days / width <= DAY_TICKS_MAX)
                .findFirst().orElse((int) Math.ceilDiv(days, DAY_TICKS_MAX));
        for (LocalDate day = firstDay(); !day.isAfter(lastDay()); day = day.plusDays(step)) {
            double x = across(day.atStartOfDay(zone).toInstant());
            pen.line(x, BOTTOM, x, BOTTOM + 7, 2, false);
            pen.text(x, BOTTOM + 25, 15, "middle", false, DAY.format(day));
        }
        pen.text(RIGHT, BOTTOM + 50, 15, "end", true, "day");
    }

    private void mark(Pen pen, Mark mark) {
        if (!day(mark.at()).isBefore(firstDay()) && day(mark.at()).isBefore(lastDay())) {
            double x = across(mark.at());
            pen.line(x, TOP - 8, x, BOTTOM, 1.5, true).text(x, TOP - 14, 14, "middle", false, mark.word());
        }
    }

    private void limit(Pen pen, Axis up, BigDecimal at, String name) {
        double y = up.at(at.doubleValue());
        pen.line(LEFT, y, RIGHT, y, 3, false);
        pen.text(RIGHT + 8, y + 5, 15, "start", true, name + Words.quantity(at, unit));
    }

    private static double height(Axis up, Point point) {
        return up.at(point.value().doubleValue());
    }

    private double across(Instant at) {
        Instant from = firstDay().atStartOfDay(zone).toInstant();
        Instant to = lastDay().atStartOfDay(zone).toInstant();
        double share = (double) Duration.between(from, at).toMillis() / Duration.between(from, to).toMillis();
        return LEFT + Math.clamp(share, 0, 1) * (RIGHT - LEFT);
    }

    private LocalDate firstDay() {
        return day(points.getFirst().at());
    }

    private LocalDate lastDay() {
        return day(points.getLast().at()).plusDays(1);
    }

    private LocalDate day(Instant at) {
        return at.atZone(zone).toLocalDate();
    }
}

package brightseam.ui.parts;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Rows of bars over a time axis: when something lasted, row by row. Marked rows are striped and say so.
 *
 * @param words what the drawing shows, as a sentence
 * @param rows from top to bottom
 * @param now where bars end that have no end
 * @param zone in which the axis reads its clocks
 */
public record SpanChart(String words, List<Row> rows, Instant now, ZoneId zone) implements Drawing {

    private static final int WIDTH = 900;
    private static final double LEFT = 272;
    private static final double RIGHT = 880;
    private static final double TOP = 40;
    private static final double ROW = 30;
    private static final double THICK = 18;
    private static final double THIN = 4;
    private static final int LABEL_MAX = 28;
    private static final int TICKS_MAX = 6;
    private static final List<Duration> STEPS = List.of(Duration.ofMinutes(1), Duration.ofMinutes(2),
            Duration.ofMinutes(5), Duration.ofMinutes(10), Duration.ofMinutes(15), Duration.ofMinutes(30),
            Duration.ofHours(1), Duration.ofHours(2), Duration.ofHours(4), Duration.ofHours(8), Duration.ofDays(1),
            Duration.ofDays(2), Duration.ofDays(7), Duration.ofDays(14), Duration.ofDays(28), Duration.ofDays(91),
            Duration.ofDays(365));

    /** One row; {@code marked} ones are striped. */
    public record Row(String label, boolean marked, List<Bar> bars) {}

    /** One bar; it lasts where it has no end. */
    public record Bar(Instant from, Optional<Instant> until) {}

    /** Copies the rows. */
    public SpanChart {
        rows = List.copyOf(rows);
    }

    @Override
    public String svg() {
        double bottom = TOP + ROW * rows.size();
        Pen pen = new Pen(WIDTH, (int) bottom + 10, words);
        Instant from = bars().map(Bar::from).min(Comparator.naturalOrder()).orElse(now);
        Instant until = bars().map(this::end).max(Comparator.naturalOrder()).orElse(now);
        Span span = new Span(from, until.isAfter(from.plusSeconds(60)) ? until : from.plusSeconds(60));
        ticks(pen, span, bottom);
        for (int i = 0; i < rows.size(); i++) {
            row(pen, span, rows.get(i), TOP + ROW * i);
        }
        pen.line(LEFT, TOP - 4, LEFT, bottom, 2, false);
        return pen.done();
    }

    private java.util.stream.Stream<Bar> bars() {
        return rows.stream().flatMap(row -> row.bars().stream());
    }

    private Instant end(Bar bar) {
        Instant end = bar.until().orElse(now);
        return end.isBefore(bar.from()) ? bar.from() : end;
    }

    private void row(Pen pen, Span span, Row row, double top) {
        String label = row.label().length() <= LABEL_MAX ? row.label()
                : row.label().substring(0, LABEL_MAX - 1) + "…";
        pen.text(LEFT - 8, top + 20, 16, "end", row.marked(), label);
        double y = top + (ROW - THICK) / 2;
        for (Bar bar : row.bars()) {
            double x = span.at(bar.from());
            double width = Math.max(THIN, span.at(end(bar)) - x);
            pen.box(x, y, width, THICK, row.marked() ? "#fff" : "#999");
            if (row.marked()) {
                pen.stripes(x, y, width, THICK);
            }
            if (bar.until().isEmpty()) {
                pen.text(x + width + 2, top + 21, 16, "start", true, "→");
            }
        }
    }

    private void ticks(Pen pen, Span span, double bottom) {
        Duration step = STEPS.stream().filter(fits -> span.length().dividedBy(fits) < TICKS_MAX).findFirst()
                .orElse(span.length().dividedBy(TICKS_MAX));
        List<ZonedDateTime> ticks = ticks(span, step);
        boolean oneDay = LocalDate.ofInstant(span.from(), zone).equals(LocalDate.ofInstant(span.until(), zone));
        String pattern = oneDay ? "HH:mm" : step.compareTo(Duration.ofDays(1)) < 0 ? "d MMM HH:mm"
                : step.compareTo(Duration.ofDays(91)) < 0 ? "d MMM" : "MMM yyyy";
        DateTimeFormatter form = DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH);
        for (ZonedDateTime tick : ticks) {
            double x = span.at(tick.toInstant());
            pen.line(x, TOP - 10, x, bottom, 1, true);
            pen.text(x, TOP - 16, 15, "middle", false, tick.format(form));
        }
    }

    /** Round times of the shop's own clock. */
    private List<ZonedDateTime> ticks(Span span, Duration step) {
        List<ZonedDateTime> ticks = new ArrayList<>();
        ZonedDateTime tick = span.from().atZone(zone).toLocalDate().atStartOfDay(zone);
        while (!tick.toInstant().isAfter(span.until())) {
            if (!tick.toInstant().isBefore(span.from())) {
                ticks.add(tick);
            }
            tick = step.toDays() > 0 ? tick.plusDays(step.toDays()) : tick.plus(step);
        }
        return ticks.stream().filter(at -> span.at(at.toInstant()) < RIGHT - 24).toList();
    }

    private record Span(Instant from, Instant until) {

        Duration length() {
            return Duration.between(from, until);
        }

        double at(Instant instant) {
            double share = (double) Duration.between(from, instant).toMillis() / length().toMillis();
            return LEFT + Math.clamp(share, 0, 1) * (RIGHT - 16 - LEFT);
        }
    }
}

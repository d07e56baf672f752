package brightseam.chart;

import brightseam.words.Words;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * A meter's series against its limit: what was measured as a line, gaps as hatched gaps, doubtful readings by their
 * shapes, what was fitted as a dashed curve with its band, a joint's arc as a grey stretch.
 *
 * @param label what was measured, such as {@code Oxygen in the chamber}
 * @param unit its symbol
 * @param logarithmic by powers of ten, for a purge; else from zero
 * @param window the time shown
 * @param points what was measured, oldest first; thinned by the caller so that no peak is lost
 * @param gapMillis points further apart than this are not joined: nothing is known between them
 * @param limit the most that is in order, where there is one
 * @param fit the fitted curve, where there is one
 * @param stretches what else went on meanwhile
 */
public record SeriesChart(
        String label,
        String unit,
        boolean logarithmic,
        ChartWindow window,
        List<ChartPoint> points,
        long gapMillis,
        Optional<Double> limit,
        Optional<ChartFit> fit,
        List<Stretch> stretches) {

    /** Width in drawing units. */
    public static final int WIDTH = 900;
    /** Height in drawing units. */
    public static final int HEIGHT = 400;

    /** Something that lasted, such as an arc; its word stands above it. */
    public record Stretch(String word, long fromMillis, long toMillis) {}

    /** Copies the lists and refuses a gap that is no length of time. */
    public SeriesChart {
        points = List.copyOf(points);
        stretches = List.copyOf(stretches);
        if (gapMillis <= 0) {
            throw new IllegalArgumentException("a gap of no length");
        }
    }

    /** What the chart shows, as a sentence. */
    public String words() {
        StringBuilder words = new StringBuilder(label).append(", ").append(window.clock(window.fromMillis()))
                .append(" to ").append(window.clock(window.toMillis())).append(": ");
        if (points.isEmpty()) {
            return words.append("no readings.").toString();
        }
        double last = points.getLast().value();
        words.append("last ").append(quantity(last));
        limit.ifPresent(most -> words.append(last > most ? ", above" : ", within").append(" the limit of ")
                .append(quantity(most)));
        double highest = points.stream().mapToDouble(ChartPoint::value).max().orElseThrow();
        words.append("; highest ").append(quantity(highest));
        List<Gap> gaps = gaps();
        if (!gaps.isEmpty()) {
            long longest = gaps.stream().mapToLong(Gap::millis).max().orElseThrow();
            words.append("; ").append(Words.count(gaps.size(), "gap", "gaps")).append(" in the readings, longest ")
                    .append(Words.duration(Duration.ofMillis(longest)));
        }
        fit.flatMap(ChartFit::arrival).ifPresent(arrival -> words.append("; ").append(arrivalWords(arrival)));
        return words.append('.').toString();
    }

    /** As SVG text. */
    public String svg() {
        SvgCanvas canvas = new SvgCanvas(WIDTH, HEIGHT, words());
        draw(canvas);
        return canvas.done();
    }

    /** On any canvas, {@link #WIDTH} by {@link #HEIGHT}. */
    public void draw(Canvas canvas) {
        new SeriesDrawer(this, canvas).draw();
    }

    /** A time without readings between two that there are. */
    record Gap(long fromMillis, long toMillis) {

        long millis() {
            return toMillis - fromMillis;
        }
    }

    List<Gap> gaps() {
        return Stream.iterate(1, i -> i < points.size(), i -> i + 1)
                .map(i -> new Gap(points.get(i - 1).atMillis(), points.get(i).atMillis()))
                .filter(gap -> gap.millis() > gapMillis).toList();
    }

    ValueScale scale(double foot, double head) {
        DoubleStream seen = Stream.of(points.stream().map(ChartPoint::value), limit.stream(),
                        fit.stream().flatMap(fitted -> fitted.curve().stream())
                                .flatMap(spot -> Stream.of(spot.low(), spot.middle())))
                .flatMap(values -> values).mapToDouble(value -> value);
        return logarithmic ? ValueScale.logarithmic(seen, foot, head) : ValueScale.fromZero(seen, foot, head);
    }

    String arrivalWords(ChartFit.Arrival arrival) {
        return "fit at " + window.clock(arrival.atMillis()) + " (" + window.clock(arrival.earliestMillis()) + " to "
                + window.clock(arrival.latestMillis()) + ")";
    }

    String quantity(double value) {
        return ValueScale.number(value) + "\u00a0" + unit;
    }
}

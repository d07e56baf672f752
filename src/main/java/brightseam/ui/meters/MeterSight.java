package brightseam.ui.meters;

import brightseam.chart.ChartPoint;
import brightseam.chart.ChartWindow;
import brightseam.chart.SeriesChart;
import brightseam.device.Meter;
import brightseam.device.Quality;
import brightseam.device.Series;
import brightseam.kernel.Moment;
import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What of a meter's readings is drawn.
 *
 * @param span how far back
 * @param logarithmic by powers of ten
 * @param line where to draw a line, in the meter's unit
 */
record MeterSight(Span span, boolean logarithmic, Optional<Double> line) {

    /** Columns of readings on a chart: each has at most its first, lowest, highest and last. */
    static final int COLUMNS = 330;

    /** How far back a chart goes. */
    enum Span {
        TEN_MINUTES("10 min", Duration.ofMinutes(10)),
        HOUR("1 h", Duration.ofHours(1)),
        SHIFT("8 h", Duration.ofHours(8)),
        DAY("24 h", Duration.ofHours(24)),
        WEEK("7 days", Duration.ofDays(7));

        private final String words;
        private final Duration length;

        Span(String words, Duration length) {
            this.words = words;
            this.length = length;
        }

        String words() {
            return words;
        }
    }

    /** Where the chart begins. */
    long fromMillis(Moment now) {
        return Math.max(0, now.elapsedMillis() - span.length.toMillis());
    }

    /** The chart of {@code series}, which ends {@code now}. */
    SeriesChart chart(Meter meter, Series series, Moment now, ZoneId zone) {
        long from = fromMillis(now);
        long to = Math.max(from + 1, now.elapsedMillis());
        return new SeriesChart(MeterWording.quantity(meter.quantity()) + ", " + meter.id(), meter.quantity().unit(),
                logarithmic && isPositive(series), new ChartWindow(from, to,
                        now.wall().minusMillis(now.elapsedMillis() - from), zone), points(series),
                Math.max(meter.silentAfterMillis(), 2 * (to - from) / COLUMNS), line, Optional.empty(), List.of());
    }

    private static boolean isPositive(Series series) {
        for (int i = 0; i < series.size(); i++) {
            if (series.value(i) <= 0) {
                return false;
            }
        }
        return true;
    }

    private static List<ChartPoint> points(Series series) {
        List<ChartPoint> points = new ArrayList<>(series.size());
        for (int i = 0; i < series.size(); i++) {
            points.add(new ChartPoint(series.millis(i), series.value(i), doubt(Quality.of(series.flags(i)))));
        }
        return points;
    }

    /** The gravest that is to be said: a point has one shape. */
    private static ChartPoint.Doubt doubt(Set<Quality> flags) {
        if (flags.contains(Quality.OUT_OF_RANGE)) {
            return ChartPoint.Doubt.OUT_OF_RANGE;
        }
        if (flags.contains(Quality.FROZEN)) {
            return ChartPoint.Doubt.FROZEN;
        }
        if (flags.contains(Quality.UNCALIBRATED)) {
            return ChartPoint.Doubt.UNCALIBRATED;
        }
        if (flags.contains(Quality.LATE)) {
            return ChartPoint.Doubt.LATE;
        }
        return flags.contains(Quality.TYPED) ? ChartPoint.Doubt.TYPED : ChartPoint.Doubt.NONE;
    }
}

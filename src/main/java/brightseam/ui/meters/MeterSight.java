package brightseam.ui.meters;

import brightseam.chart.ChartWindow;
import brightseam.chart.SeriesChart;
import brightseam.device.Meter;
import brightseam.device.Series;
import brightseam.kernel.Moment;
import brightseam.ui.parts.SeriesPoints;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

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
                        now.wall().minusMillis(now.elapsedMillis() - from), zone), SeriesPoints.of(series),
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
}

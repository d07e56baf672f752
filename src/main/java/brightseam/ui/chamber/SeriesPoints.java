package brightseam.ui.chamber;

import brightseam.chart.ChartPoint;
import brightseam.device.Quality;
import brightseam.device.Series;
import brightseam.purge.MeasuredCurve;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** A meter's series as a chart and as a fit need it. */
final class SeriesPoints {

    private static final double MILLIS = 1000;

    private SeriesPoints() {}

    /** Every reading with its doubt. */
    static List<ChartPoint> of(Series series) {
        List<ChartPoint> points = new ArrayList<>(series.size());
        for (int i = 0; i < series.size(); i++) {
            points.add(new ChartPoint(series.millis(i), series.value(i), doubt(Quality.of(series.flags(i)))));
        }
        return points;
    }

    /** What can be relied on, in seconds since {@code fromMillis}. */
    static MeasuredCurve curve(Series series, long fromMillis) {
        int[] usable = IntStream.range(0, series.size()).filter(series::isUsable).toArray();
        return MeasuredCurve.of(
                IntStream.of(usable).mapToDouble(i -> (series.millis(i) - fromMillis) / MILLIS).toArray(),
                IntStream.of(usable).mapToDouble(series::value).toArray());
    }

    private static ChartPoint.Doubt doubt(Set<Quality> quality) {
        if (quality.contains(Quality.OUT_OF_RANGE)) {
            return ChartPoint.Doubt.OUT_OF_RANGE;
        }
        if (quality.contains(Quality.FROZEN)) {
            return ChartPoint.Doubt.FROZEN;
        }
        if (quality.contains(Quality.UNCALIBRATED)) {
            return ChartPoint.Doubt.UNCALIBRATED;
        }
        if (quality.contains(Quality.LATE)) {
            return ChartPoint.Doubt.LATE;
        }
        return quality.contains(Quality.TYPED) ? ChartPoint.Doubt.TYPED : ChartPoint.Doubt.NONE;
    }
}

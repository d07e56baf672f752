package brightseam.ui.parts;

import brightseam.chart.ChartPoint;
import brightseam.device.Quality;
import brightseam.device.Series;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** A meter's series as a chart needs it. */
public final class SeriesPoints {

    private SeriesPoints() {}

    /** Every reading with its doubt. */
    public static List<ChartPoint> of(Series series) {
        List<ChartPoint> points = new ArrayList<>(series.size());
        for (int i = 0; i < series.size(); i++) {
            points.add(new ChartPoint(series.millis(i), series.value(i), doubt(Quality.of(series.flags(i)))));
        }
        return points;
    }

    /** The gravest that is to be said: a point has one shape. */
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

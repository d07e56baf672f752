package brightseam.report.shell;

import brightseam.chart.ChartPoint;
import brightseam.chart.ChartPoint.Doubt;
import brightseam.device.Quality;
import brightseam.device.Series;
import brightseam.device.shell.Readings;
import brightseam.kernel.SupplyId;
import brightseam.report.OxygenReadings;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.springframework.stereotype.Component;

/** The stored readings of a meter, for the record's charts. */
@Component
class StoredReadings implements OxygenReadings {

    private static final int COLUMNS = 300;

    private final Readings readings;

    StoredReadings(Readings readings) {
        this.readings = readings;
    }

    @Override
    public List<ChartPoint> between(SupplyId meter, long fromMillis, long toMillis) {
        if (toMillis <= fromMillis) {
            return List.of();
        }
        Series series = readings.chart(meter, fromMillis, toMillis, COLUMNS);
        List<ChartPoint> points = new ArrayList<>(series.size());
        for (int i = 0; i < series.size(); i++) {
            points.add(new ChartPoint(series.millis(i), series.value(i), doubt(Quality.of(series.flags(i)))));
        }
        return points;
    }

    private static Doubt doubt(Set<Quality> quality) {
        if (quality.contains(Quality.OUT_OF_RANGE)) {
            return Doubt.OUT_OF_RANGE;
        }
        if (quality.contains(Quality.FROZEN)) {
            return Doubt.FROZEN;
        }
        if (quality.contains(Quality.UNCALIBRATED)) {
            return Doubt.UNCALIBRATED;
        }
        if (quality.contains(Quality.LATE)) {
            return Doubt.LATE;
        }
        return quality.contains(Quality.TYPED) ? Doubt.TYPED : Doubt.NONE;
    }
}

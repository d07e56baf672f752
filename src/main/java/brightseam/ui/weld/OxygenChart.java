package brightseam.ui.weld;

import brightseam.chart.ChartPoint;
import brightseam.chart.ChartWindow;
import brightseam.chart.SeriesChart;
import brightseam.device.Quality;
import brightseam.device.Series;
import brightseam.device.shell.Readings;
import brightseam.kernel.Moment;
import brightseam.weld.Arc;
import brightseam.weld.Joint;
import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The oxygen over one arc of a joint, from shortly before it until the joint was cool. */
final class OxygenChart {

    private static final Duration BEFORE = Duration.ofSeconds(20);
    private static final int COLUMNS = 900;
    private static final int GAP_COLUMNS = 3;

    private OxygenChart() {}

    /** The chart of {@code arc}, which has ended. */
    static SeriesChart of(Joint joint, Arc arc, Readings readings, Moment now, ZoneId zone) {
        Moment stopped = arc.stoppedAt().orElse(now);
        Moment cool = stopped.plus(joint.plan().cooling().hold());
        Moment end = cool.isAfter(now) ? now : cool;
        long from = Math.max(0, arc.hotFrom().elapsedMillis() - BEFORE.toMillis());
        long to = end.plus(BEFORE).elapsedMillis();
        Series series = readings.chart(arc.setting().oxygen().meter(), from, to, COLUMNS);
        List<SeriesChart.Stretch> stretches = new ArrayList<>();
        stretches.add(new SeriesChart.Stretch("arc", arc.startedAt().elapsedMillis(), stopped.elapsedMillis()));
        long gap = Math.max(arc.setting().longestGap().toMillis(), GAP_COLUMNS * (to - from) / COLUMNS);
        return new SeriesChart("Oxygen, " + arc.setting().oxygen().meter(), "ppm", false,
                new ChartWindow(from, to, arc.hotFrom().wall().minusMillis(arc.hotFrom().elapsedMillis() - from), zone),
                points(series), Math.max(1, gap), Optional.of(arc.setting().oxygen().ppmMax().doubleValue()),
                Optional.empty(), stretches);
    }

    private static List<ChartPoint> points(Series series) {
        List<ChartPoint> points = new ArrayList<>(series.size());
        for (int i = 0; i < series.size(); i++) {
            points.add(new ChartPoint(series.millis(i), series.value(i), doubt(Quality.of(series.flags(i)))));
        }
        return points;
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
        return quality.contains(Quality.LATE) ? ChartPoint.Doubt.LATE : ChartPoint.Doubt.NONE;
    }
}

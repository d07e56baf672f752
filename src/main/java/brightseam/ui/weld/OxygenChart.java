package brightseam.ui.weld;

import brightseam.chart.ChartWindow;
import brightseam.chart.SeriesChart;
import brightseam.device.Series;
import brightseam.device.shell.Readings;
import brightseam.kernel.Moment;
import brightseam.ui.parts.SeriesPoints;
import brightseam.weld.Arc;
import brightseam.weld.Joint;
import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The oxygen over one arc of a joint, from shortly before it until the joint was cool. */
public final class OxygenChart {

    private static final Duration BEFORE = Duration.ofSeconds(20);
    private static final int COLUMNS = 900;
    private static final int GAP_COLUMNS = 3;

    private OxygenChart() {}

    /** The chart of {@code arc}, which has ended. */
    public static SeriesChart of(Joint joint, Arc arc, Readings readings, Moment now, ZoneId zone) {
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
                SeriesPoints.of(series), Math.max(1, gap), Optional.of(arc.setting().oxygen().ppmMax().doubleValue()),
                Optional.empty(), stretches);
    }
}

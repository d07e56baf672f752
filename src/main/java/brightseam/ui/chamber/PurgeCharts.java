package brightseam.ui.chamber;

import brightseam.chart.ChartFit;
import brightseam.chart.ChartWindow;
import brightseam.chart.SeriesChart;
import brightseam.device.MeterNow;
import brightseam.device.MeterPlace;
import brightseam.device.MeterQuantity;
import brightseam.device.Series;
import brightseam.device.shell.Readings;
import brightseam.kernel.Moment;
import brightseam.kernel.SessionId;
import brightseam.kernel.shell.ShopClock;
import brightseam.session.Purge;
import brightseam.session.PurgeCourse;
import brightseam.session.shell.PurgeCourses;
import brightseam.session.shell.SessionView;
import brightseam.ui.parts.SeriesPoints;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/**
 * How purges go, drawn and told once for everybody who watches: a chart every second, a fit every few seconds, however
 * many tablets look.
 */
@Component
class PurgeCharts {

    private static final int COLUMNS = 320;
    private static final long CHART_MILLIS = 1_000;
    private static final long FIT_MILLIS = 5_000;
    private static final long ROOM_AHEAD_MILLIS = 5 * 60_000L;

    private final Readings readings;
    private final PurgeCourses courses;
    private final ShopClock clock;
    private final Map<SessionId, Kept> kept = new ConcurrentHashMap<>();

    private record Kept(long chartAt, long fitAt, Optional<PurgeCourse> course, Live.Purge purge) {}

    PurgeCharts(Readings readings, PurgeCourses courses, ShopClock clock) {
        this.readings = readings;
        this.courses = courses;
        this.clock = clock;
    }

    /** How the purge of {@code view} goes; empty where none runs or nothing measures it. */
    Optional<Live.Purge> of(SessionView view) {
        Optional<Purge> purge = view.session().gas().purge().filter(one -> one.stoppedAt().isEmpty());
        Optional<MeterNow> meter = readings.now(view.session().chamber(), MeterPlace.CHAMBER,
                MeterQuantity.OXYGEN_PPM);
        if (purge.isEmpty() || meter.isEmpty()) {
            kept.remove(view.session().id());
            return Optional.empty();
        }
        long now = (long) (view.now().elapsedMillis() / clock.speed());
        Kept next = kept.compute(view.session().id(), (id, before) ->
                before != null && now - before.chartAt() < CHART_MILLIS ? before
                        : drawn(view, purge.get(), meter.get(), now, Optional.ofNullable(before)));
        return Optional.of(next.purge());
    }

    private Kept drawn(SessionView view, Purge purge, MeterNow meter, long now, Optional<Kept> before) {
        Optional<Kept> fresh = before.filter(old -> now - old.fitAt() < FIT_MILLIS);
        Optional<PurgeCourse> course = fresh.map(Kept::course).orElseGet(() -> courses.of(view.session().id()));
        Moment start = course.map(PurgeCourse::from).orElse(purge.startedAt());
        long to = Math.max(start.elapsedMillis() + 1, view.now().elapsedMillis());
        Series series = readings.chart(meter.meter().id(), start.elapsedMillis(), to, COLUMNS);
        double limit = purge.limits().oxygenPpmMax().doubleValue();
        Optional<ChartFit> fit = course.flatMap(known -> PurgeWords.fit(known.oxygen(), start));
        long end = Stream.concat(Stream.of(to + ROOM_AHEAD_MILLIS), fit.stream().flatMap(curve ->
                curve.curve().stream().map(ChartFit.Spot::atMillis))).reduce(to, Math::max);
        SeriesChart chart = new SeriesChart("Oxygen, " + meter.meter().id(), "ppm", true,
                new ChartWindow(start.elapsedMillis(), end, start.wall(), ZoneId.systemDefault()),
                SeriesPoints.of(series), gap(meter, to - start.elapsedMillis()), Optional.of(limit), fit,
                java.util.List.of());
        Live.Purge told = new Live.Purge(chart.svg(), chart.words(), course.map(known -> PurgeWords.forecast(
                known.oxygen(), start, view.now(), ZoneId.systemDefault())).orElse(""), course.flatMap(
                PurgeWords::level));
        return new Kept(now, fresh.map(Kept::fitAt).orElse(now), course, told);
    }

    /** Thinned readings stand further apart than the meter sent them. */
    private static long gap(MeterNow meter, long spanMillis) {
        return Math.max(meter.meter().silentAfterMillis(), 3 * spanMillis / COLUMNS);
    }
}

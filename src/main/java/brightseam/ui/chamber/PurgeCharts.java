package brightseam.ui.chamber;

import brightseam.chamber.Chamber;
import brightseam.chamber.shell.Chambers;
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
import brightseam.ledger.Versioned;
import brightseam.purge.LeakExpected;
import brightseam.purge.MeasuredCurve;
import brightseam.purge.MeterTraits;
import brightseam.purge.PurgeOutlook;
import brightseam.purge.PurgeRun;
import brightseam.session.Purge;
import brightseam.session.shell.SessionView;
import brightseam.ui.parts.SeriesPoints;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/**
 * How purges go, drawn and told once for everybody who watches: a chart every second, a fit every few seconds, however
 * many tablets look.
 */
@Component
class PurgeCharts {

    private static final double MILLIS = 1000;
    private static final int COLUMNS = 320;
    private static final long CHART_MILLIS = 1_000;
    private static final long FIT_MILLIS = 5_000;
    private static final long ROOM_AHEAD_MILLIS = 5 * 60_000L;

    private final Readings readings;
    private final Chambers chambers;
    private final ShopClock clock;
    private final Map<SessionId, Kept> kept = new ConcurrentHashMap<>();

    private record Kept(long chartAt, long fitAt, PurgeOutlook outlook, Live.Purge purge) {}

    PurgeCharts(Readings readings, Chambers chambers, ShopClock clock) {
        this.readings = readings;
        this.chambers = chambers;
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
        Moment start = beginning(view, purge);
        long to = Math.max(start.elapsedMillis() + 1, view.now().elapsedMillis());
        Optional<Kept> fresh = before.filter(old -> now - old.fitAt() < FIT_MILLIS);
        PurgeOutlook outlook = fresh.map(Kept::outlook).orElseGet(() -> outlook(view, purge, meter, start, to));
        Series series = readings.chart(meter.meter().id(), start.elapsedMillis(), to, COLUMNS);
        double limit = purge.limits().oxygenPpmMax().doubleValue();
        Optional<ChartFit> fit = PurgeWords.fit(outlook, start);
        long end = Stream.concat(Stream.of(to + ROOM_AHEAD_MILLIS), fit.stream().flatMap(curve ->
                curve.curve().stream().map(ChartFit.Spot::atMillis))).reduce(to, Math::max);
        SeriesChart chart = new SeriesChart("Oxygen, " + meter.meter().id(), "ppm", true,
                new ChartWindow(start.elapsedMillis(), end, start.wall(), ZoneId.systemDefault()),
                SeriesPoints.of(series), gap(meter, to - start.elapsedMillis()), Optional.of(limit), fit,
                java.util.List.of());
        Live.Purge told = new Live.Purge(chart.svg(), chart.words(), PurgeWords.forecast(outlook, start,
                view.now(), ZoneId.systemDefault()), PurgeWords.level(outlook));
        return new Kept(now, fresh.map(Kept::fitAt).orElse(now), outlook, told);
    }

    /** A curve begins anew where the inner door let other gas in. */
    private static Moment beginning(SessionView view, Purge purge) {
        return view.session().passes().stream().flatMap(pass -> pass.shutAt().stream()).reduce((a, b) -> b)
                .filter(shut -> shut.isAfter(purge.startedAt())).orElse(purge.startedAt());
    }

    /** Thinned readings stand further apart than the meter sent them. */
    private static long gap(MeterNow meter, long spanMillis) {
        return Math.max(meter.meter().silentAfterMillis(), 3 * spanMillis / COLUMNS);
    }

    private PurgeOutlook outlook(SessionView view, Purge purge, MeterNow meter, Moment start, long to) {
        Optional<Chamber> chamber = chambers.find(view.session().chamber()).map(Versioned::state);
        if (chamber.isEmpty() || view.session().passGoingOn().isPresent()) {
            return new PurgeOutlook.TooEarly(PurgeOutlook.Why.DOES_NOT_FIT, java.util.OptionalDouble.empty(),
                    Double.NaN);
        }
        PurgeRun run = PurgeRun.steady(chamber.get().terms().purgedLitres().doubleValue(),
                chamber.get().terms().flows().purgeLitresPerMinute().doubleValue(),
                purge.argon().oxygenPpm().doubleValue());
        MeterTraits known = MeterTraits.of(meter.meter().resolution(),
                meter.meter().responseTime().toMillis() / 1000.0);
        MeterTraits traits = new MeterTraits(known.resolutionPpm(), known.noisePpm(), known.noiseShare(),
                known.t90Seconds(), Math.min(1e6, meter.meter().rangeHigh()));
        MeasuredCurve curve = curve(readings.chart(meter.meter().id(), start.elapsedMillis(), to,
                2 * COLUMNS), start.elapsedMillis());
        Optional<LeakExpected> leak = chamber.get().leak().map(test -> test.airLitresPerMinute().doubleValue())
                .map(litres -> new LeakExpected(litres, Math.max(litres, 0.001)));
        return PurgeOutlook.of(run, traits, curve, purge.limits().oxygenPpmMax().doubleValue(), leak);
    }

    /** What can be relied on, in seconds since {@code fromMillis}. */
    private static MeasuredCurve curve(Series series, long fromMillis) {
        int[] usable = IntStream.range(0, series.size()).filter(series::isUsable).toArray();
        return MeasuredCurve.of(
                IntStream.of(usable).mapToDouble(i -> (series.millis(i) - fromMillis) / MILLIS).toArray(),
                IntStream.of(usable).mapToDouble(series::value).toArray());
    }
}

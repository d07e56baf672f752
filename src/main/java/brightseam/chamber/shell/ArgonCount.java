package brightseam.chamber.shell;

import brightseam.chamber.ArgonReading;
import brightseam.chamber.ArgonSource;
import brightseam.chamber.Chamber;
import brightseam.chamber.Consumption;
import brightseam.chamber.ConsumptionReport;
import brightseam.device.Series;
import brightseam.kernel.Moment;
import brightseam.kernel.SessionId;
import brightseam.ledger.Versioned;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Counts what a session used, source by source from readings, and from what flowed. */
final class ArgonCount {

    /** A reading so long before or after still stands for the moment, where no gauge tells it; our own bound. */
    private static final Duration READ_WITHIN = Duration.ofHours(12);
    /** Readings are taken about when something is done; our own bound. */
    private static final Duration SLACK = Duration.ofMinutes(2);
    /** A meter's value so old still stands for the moment; our own bound. */
    private static final Duration GAUGED_WITHIN = Duration.ofMinutes(2);
    /** Flow readings further apart prove nothing of the time between; our own bound. */
    private static final Duration FLOW_GAP = Duration.ofMinutes(1);
    private static final int READINGS_MAX = 200;

    private final ArgonStore store;
    private final ArgonGauges gauges;

    ArgonCount(ArgonStore store, ArgonGauges gauges) {
        this.store = store;
        this.gauges = gauges;
    }

    ConsumptionReport of(Chamber chamber, SessionId session, BigDecimal forecast, Moment from, Moment to) {
        List<ArgonRows.Span> spans = store.spans(chamber.station(), from.elapsedMillis(), to.elapsedMillis());
        List<ConsumptionReport.SourceUse> uses = new ArrayList<>();
        for (ArgonRows.Span span : spans) {
            used(chamber, span, spans, to).ifPresent(litres ->
                    uses.add(new ConsumptionReport.SourceUse(span.supply(), whole(litres))));
        }
        Optional<BigDecimal> content = uses.isEmpty() || uses.size() < spans.size() ? Optional.empty()
                : Optional.of(uses.stream().map(ConsumptionReport.SourceUse::standardLitres)
                        .reduce(BigDecimal.ZERO, BigDecimal::add));
        List<Consumption.Flowed> flowed = flowed(chamber, from, to);
        long unproven = flowed.stream().mapToLong(Consumption.Flowed::unprovenMillis).max()
                .orElse(to.elapsedMillis() - from.elapsedMillis());
        Optional<BigDecimal> flow = flowed.stream().allMatch(one -> one.provenMillis() == 0) ? Optional.empty()
                : Optional.of(whole(flowed.stream().mapToDouble(Consumption.Flowed::standardLitres).sum()));
        return new ConsumptionReport(session, forecast, content, flow, unproven / 1000, uses);
    }

    private Optional<Double> used(Chamber chamber, ArgonRows.Span span, List<ArgonRows.Span> spans, Moment now) {
        Optional<ArgonSource> source = store.find(span.supply()).map(Versioned::state);
        boolean alone = spans.stream().noneMatch(other -> other != span
                && other.fromMillis() < span.toMillis() && span.fromMillis() < other.toMillis());
        return source.flatMap(known -> begins(chamber, known, span, alone, now).flatMap(before ->
                ends(chamber, known, span, alone, now).map(after ->
                        Consumption.byContent(known.vessel(), before, after))));
    }

    /** What was read when it was connected goes before the meter, which still told of the source before it then. */
    private Optional<ArgonReading> begins(
            Chamber chamber, ArgonSource source, ArgonRows.Span span, boolean alone, Moment now) {
        return read(source, span.fromMillis(), SLACK)
                .or(() -> gauged(chamber, source, span.fromMillis(), alone, now))
                .or(() -> read(source, span.fromMillis(), READ_WITHIN));
    }

    private Optional<ArgonReading> read(ArgonSource source, long millis, Duration before) {
        return store.readings(source.id(), READINGS_MAX).stream()
                .filter(one -> within(one, millis - before.toMillis(), millis + SLACK.toMillis())).findFirst();
    }

    private Optional<ArgonReading> ends(
            Chamber chamber, ArgonSource source, ArgonRows.Span span, boolean alone, Moment now) {
        return gauged(chamber, source, span.toMillis(), alone, now)
                .or(() -> store.readings(source.id(), READINGS_MAX).reversed().stream()
                        .filter(one -> within(one, span.toMillis() - SLACK.toMillis(),
                                span.toMillis() + READ_WITHIN.toMillis())).findFirst());
    }

    /** What the meter in the supply said just before; it tells of one source only where no other fed the chamber. */
    private Optional<ArgonReading> gauged(
            Chamber chamber, ArgonSource source, long millis, boolean alone, Moment now) {
        return alone ? SourceReading.of(source, chamber, now, quantity -> gauges.lastIn(chamber.station(), quantity,
                millis - GAUGED_WITHIN.toMillis(), millis)) : Optional.empty();
    }

    private List<Consumption.Flowed> flowed(Chamber chamber, Moment from, Moment to) {
        double celsius = chamber.terms().flows().temperatureCelsius().doubleValue();
        return gauges.flows(chamber, from.elapsedMillis(), to.elapsedMillis()).stream()
                .map(series -> flowed(series, celsius, from, to)).toList();
    }

    private static Consumption.Flowed flowed(Series series, double celsius, Moment from, Moment to) {
        int usable = 0;
        long[] millis = new long[series.size()];
        double[] litres = new double[series.size()];
        for (int i = 0; i < series.size(); i++) {
            if (series.isUsable(i)) {
                millis[usable] = series.millis(i);
                litres[usable++] = series.value(i);
            }
        }
        return Consumption.byFlow(java.util.Arrays.copyOf(millis, usable), java.util.Arrays.copyOf(litres, usable),
                from.elapsedMillis(), to.elapsedMillis(), celsius, FLOW_GAP.toMillis());
    }

    private static boolean within(ArgonReading reading, long fromMillis, long toMillis) {
        long at = reading.at().elapsedMillis();
        return at >= fromMillis && at <= toMillis;
    }

    private static BigDecimal whole(double litres) {
        return BigDecimal.valueOf(litres).setScale(0, RoundingMode.HALF_UP);
    }
}

package brightseam.report;

import brightseam.chart.ChartPoint;
import brightseam.chart.ChartWindow;
import brightseam.chart.SeriesChart;
import brightseam.kernel.TravellerId;
import brightseam.traveller.JointFact;
import brightseam.traveller.JudgedFact;
import brightseam.traveller.SpanFact;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * One run of a joint that pieces of the traveller are part of.
 *
 * @param stretches what the meters proved of it, at least one: of the arc, then of the cooling, or of both at once
 * @param pass in which passage of the weld step
 * @param lot the label that its pieces went under
 * @param pieces which pieces of this traveller
 * @param welder who welded it
 * @param verdicts what inspectors said of it, oldest first
 * @param readings the oxygen while it was hot, for the chart; empty where no readings are kept any more
 */
public record JointTaken(List<JointFact> stretches, int pass, TravellerId lot, List<Integer> pieces, Who welder,
        List<Judged> verdicts, List<ChartPoint> readings) {

    /** Columns of a chart; readings are thinned to them. */
    static final int COLUMNS = 300;
    /** After so many of its usual times between two readings a meter is silent. Common practice. */
    private static final int SILENT_AFTER = 3;

    /** A verdict with the signature under it. */
    public record Judged(JudgedFact verdict, Mark mark) {}

    /** Copies the lists. */
    public JointTaken {
        stretches = List.copyOf(stretches);
        pieces = List.copyOf(pieces);
        verdicts = List.copyOf(verdicts);
        readings = List.copyOf(readings);
    }

    /** The stretch that reaches furthest. */
    public JointFact fact() {
        return stretches.getLast();
    }

    /** Whether nothing was above the limit, and all of it is proven. */
    public boolean isInOrder() {
        return stretches.stream().noneMatch(stretch -> stretch.exceedsLimit() || !stretch.proven());
    }

    /** What stretch {@code number} is, such as {@code during the arc}. */
    public String stretch(int number) {
        JointFact stretch = stretches.get(number);
        return number > 0 ? "while it cooled"
                : stretch.hotUntil().equals(stretch.stoppedAt()) ? "during the arc" : "while hot";
    }

    /** Oxygen over the joint while it was hot: its limit, gaps as gaps, the arc as a grey stretch. */
    public SeriesChart chart(ZoneId zone) {
        JointFact fact = fact();
        long from = fact.startedAt().elapsedMillis();
        long to = Math.max(from + 1, fact.hotUntil().elapsedMillis());
        return new SeriesChart("Oxygen over " + fact.joint() + ", run " + fact.run() + ", " + fact.oxygenMeter(),
                "ppm", false, new ChartWindow(from, to, fact.startedAt().wall(), zone), readings, gapMillis(to - from),
                Optional.of(fact.oxygenPpmLimit().doubleValue()), Optional.empty(),
                List.of(new SeriesChart.Stretch("arc", from, fact.stoppedAt().elapsedMillis())));
    }

    /**
     * As short as the shortest gap that was found, and as a silence that is long for this meter; thinned readings stand
     * further apart than the meter sent them.
     */
    private long gapMillis(long spanMillis) {
        long shortest = stretches.stream().flatMap(stretch -> stretch.gaps().stream()).map(JointTaken::length)
                .mapToLong(Duration::toMillis).min().orElse(spanMillis);
        long[] apart = IntStream.range(1, readings.size())
                .mapToLong(i -> readings.get(i).atMillis() - readings.get(i - 1).atMillis()).sorted().toArray();
        long usual = apart.length == 0 ? spanMillis : apart[apart.length / 2];
        return Math.max(Math.max(1, 3 * spanMillis / COLUMNS), Math.min(shortest - 1, SILENT_AFTER * usual));
    }

    private static Duration length(SpanFact span) {
        return span.to().since(span.from());
    }
}

package brightseam.session;

import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.session.Stretch.Point;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Judges whether the gas in a chamber is fit to weld: every meter that is asked for can be relied on, and its readings
 * have lain inside the limit, without a gap, for the dwell. Numbers are rounded up, never in favour of the weld.
 */
public final class FitnessToWeld {

    private static final int PPM_DECIMALS = 1;

    private final GasLimits limits;
    private final Moment now;

    private FitnessToWeld(GasLimits limits, Moment now) {
        this.limits = limits;
        this.now = now;
    }

    /**
     * What the readings say at {@code now}.
     *
     * @param chamber named where a meter is not registered
     * @param oxygen the oxygen meter; empty where none is registered
     * @param moisture the moisture meter; looked at only where a limit is set
     */
    public static Fitness judge(StationId chamber, GasLimits limits, Optional<Stretch> oxygen,
            Optional<Stretch> moisture, Moment now) {
        FitnessToWeld judge = new FitnessToWeld(limits, now);
        List<Refusal> reasons = new ArrayList<>();
        List<Long> since = new ArrayList<>();
        judge.look(oxygen, limits.oxygenPpmMax(), () -> new SessionRefusal.NoOxygenMeter(chamber),
                point -> new SessionRefusal.OxygenAboveLimit(point.meter(), point.ppm(), limits.oxygenPpmMax()),
                reasons, since);
        limits.moisturePpmMax().ifPresent(most -> judge.look(moisture, most,
                () -> new SessionRefusal.NoMoistureMeter(chamber),
                point -> new SessionRefusal.MoistureAboveLimit(point.meter(), point.ppm(), most), reasons, since));
        if (!reasons.isEmpty()) {
            return new Fitness.NotFit(reasons);
        }
        long from = since.stream().mapToLong(Long::longValue).max().orElseThrow();
        long shown = Stream.concat(oxygen.stream(), limits.moisturePpmMax().stream().flatMap(most -> moisture.stream()))
                .mapToLong(stretch -> stretch.points().getLast().elapsedMillis()).min().orElseThrow();
        if (Duration.ofMillis(shown - from).compareTo(limits.dwell()) < 0) {
            Moment begun = judge.moment(from);
            return new Fitness.NotFit(List.of(new SessionRefusal.DwellRunning(begun, begun.plus(limits.dwell()))));
        }
        return new Fitness.Fit(judge.moment(from), last(oxygen).orElseThrow(),
                limits.moisturePpmMax().flatMap(most -> last(moisture)));
    }

    private record Excess(SupplyId meter, BigDecimal ppm) {}

    private void look(Optional<Stretch> meter, BigDecimal most, java.util.function.Supplier<Refusal> missing,
            Function<Excess, Refusal> above, List<Refusal> reasons, List<Long> since) {
        if (meter.isEmpty()) {
            reasons.add(missing.get());
            return;
        }
        Stretch stretch = meter.get();
        List<String> troubles = troubles(stretch);
        if (!troubles.isEmpty()) {
            reasons.add(new SessionRefusal.MeterNotUsable(stretch.meter(), troubles));
            return;
        }
        Point last = stretch.points().getLast();
        if (!isInside(last, most)) {
            reasons.add(above.apply(new Excess(stretch.meter(), shown(last.ppm()))));
            return;
        }
        since.add(beginning(stretch.points(), most));
    }

    private List<String> troubles(Stretch stretch) {
        if (!stretch.troubles().isEmpty()) {
            return stretch.troubles();
        }
        OptionalLong last = stretch.points().stream().mapToLong(Point::elapsedMillis).max();
        if (last.isEmpty()) {
            return MeterFact.UNHEARD;
        }
        if (now.elapsedMillis() - last.getAsLong() > limits.longestGap().toMillis()) {
            return List.of("silent");
        }
        Point newest = stretch.points().getLast();
        return newest.reliable() && Double.isFinite(newest.ppm()) ? List.of() : List.of("unreliable-reading");
    }

    /** Elapsed time of the first reading of the run that ends with the last one. */
    private long beginning(List<Point> points, BigDecimal most) {
        long from = points.getLast().elapsedMillis();
        for (int i = points.size() - 2; i >= 0; i--) {
            Point point = points.get(i);
            boolean gap = from - point.elapsedMillis() > limits.longestGap().toMillis();
            if (gap || !point.reliable() || !isInside(point, most)) {
                return from;
            }
            from = point.elapsedMillis();
        }
        return from;
    }

    private static boolean isInside(Point point, BigDecimal most) {
        return Double.isFinite(point.ppm()) && point.ppm() <= most.doubleValue();
    }

    private Moment moment(long elapsedMillis) {
        return now.plus(Duration.ofMillis(elapsedMillis - now.elapsedMillis()));
    }

    private static Optional<BigDecimal> last(Optional<Stretch> meter) {
        return meter.map(stretch -> shown(stretch.points().getLast().ppm()));
    }

    private static BigDecimal shown(double ppm) {
        return BigDecimal.valueOf(ppm).setScale(PPM_DECIMALS, RoundingMode.CEILING);
    }
}

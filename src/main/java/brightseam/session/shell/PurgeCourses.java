package brightseam.session.shell;

import brightseam.chamber.Chamber;
import brightseam.chamber.shell.Chambers;
import brightseam.device.Meter;
import brightseam.device.MeterNow;
import brightseam.device.MeterPlace;
import brightseam.device.MeterQuantity;
import brightseam.device.Series;
import brightseam.device.shell.Readings;
import brightseam.kernel.Moment;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.Versioned;
import brightseam.purge.LeakExpected;
import brightseam.purge.LevelCause;
import brightseam.purge.MeasuredCurve;
import brightseam.purge.MeterTraits;
import brightseam.purge.PurgeOutlook;
import brightseam.purge.PurgeRun;
import brightseam.purge.PurgeRun.FlowStep;
import brightseam.purge.RoomAir;
import brightseam.session.ChamberSession;
import brightseam.session.GasLimits;
import brightseam.session.LockPass;
import brightseam.session.Purge;
import brightseam.session.PurgeCourse;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.springframework.stereotype.Service;

/**
 * Reads the stored readings of a running purge as a curve, and says what it tells of the limits. Each answer is worked
 * out anew, in some ten milliseconds.
 */
@Service
public class PurgeCourses {

    private static final double MILLIS_PER_SECOND = 1_000;
    /** A measured flow is taken as steady for so long; shorter waves do not matter to a chamber of many litres. */
    private static final long FLOW_STEP_MILLIS = 30_000;
    /** How far a leak may have grown or shrunk since its test, as a share of it, and at least: our own caution. */
    private static final double LEAK_DOUBT_SHARE = 0.5;
    private static final double LEAK_DOUBT_MIN_LITRES_PER_MINUTE = 0.001;

    private static final PurgeOutlook DOOR_OPEN = new PurgeOutlook.TooEarly(
            PurgeOutlook.Why.DOES_NOT_FIT, OptionalDouble.empty(), Double.NaN);

    private final Sessions sessions;
    private final Chambers chambers;
    private final Readings readings;
    private final ShopClock clock;

    PurgeCourses(Sessions sessions, Chambers chambers, Readings readings, ShopClock clock) {
        this.sessions = sessions;
        this.chambers = chambers;
        this.readings = readings;
        this.clock = clock;
    }

    /** What the curve of session {@code name} tells; empty where it is not purged or nothing measures its oxygen. */
    public Optional<PurgeCourse> of(SessionId name) {
        Moment now = clock.now();
        ChamberSession session = sessions.find(name).map(Versioned::state).orElse(null);
        if (session == null || !session.phase().isPurged() || session.gas().purge().isEmpty()) {
            return Optional.empty();
        }
        Purge purge = session.gas().purge().get();
        return chambers.find(session.chamber()).map(Versioned::state).flatMap(chamber ->
                meter(session.chamber(), MeterQuantity.OXYGEN_PPM).map(meter ->
                        course(session, purge, chamber, meter.meter(), now)));
    }

    private PurgeCourse course(ChamberSession session, Purge purge, Chamber chamber, Meter meter, Moment now) {
        Moment from = from(session, purge);
        List<FlowStep> flows = flows(chamber, from, now);
        GasLimits limits = purge.limits();
        if (session.passGoingOn().isPresent()) {
            return new PurgeCourse(meter.id(), from, limits.oxygenPpmMax(), DOOR_OPEN, Optional.empty(),
                    Optional.empty());
        }
        PurgeOutlook oxygen = outlook(run(chamber, flows, purge.argon().oxygenPpm().doubleValue(),
                RoomAir.OXYGEN_PPM), meter, from, now, limits.oxygenPpmMax().doubleValue(), leak(chamber));
        Optional<PurgeOutlook> moisture = meter(session.chamber(), MeterQuantity.MOISTURE_PPM)
                .map(wet -> outlook(run(chamber, flows, purge.argon().moisturePpm().doubleValue(),
                        RoomAir.WORKSHOP.moisturePpm()), wet.meter(), from, now,
                        limits.moisturePpmMax().orElse(limits.oxygenPpmMax()).doubleValue(), Optional.empty()));
        return new PurgeCourse(meter.id(), from, limits.oxygenPpmMax(), oxygen, moisture,
                cause(purge, oxygen, moisture));
    }

    /** An open door changes the gas at once: the curve begins anew behind it. */
    private static Moment from(ChamberSession session, Purge purge) {
        return session.passes().stream().map(LockPass::shutAt).flatMap(Optional::stream)
                .filter(purge.startedAt()::isBefore).reduce((first, second) -> second).orElse(purge.startedAt());
    }

    private PurgeOutlook outlook(PurgeRun run, Meter meter, Moment from, Moment now, double limitPpm,
            Optional<LeakExpected> leak) {
        MeterTraits traits = MeterTraits.of(meter.resolution(), meter.responseTime().toMillis() / MILLIS_PER_SECOND);
        return PurgeOutlook.of(run, new MeterTraits(traits.resolutionPpm(), traits.noisePpm(), traits.noiseShare(),
                traits.t90Seconds(), meter.rangeHigh()), curve(meter, from, now), limitPpm, leak);
    }

    private MeasuredCurve curve(Meter meter, Moment from, Moment now) {
        Series series = readings.series(meter.id(), from.elapsedMillis(), now.elapsedMillis());
        int[] usable = IntStream.range(0, series.size()).filter(series::isUsable).toArray();
        return MeasuredCurve.of(
                IntStream.of(usable).mapToDouble(i -> seconds(from, series.millis(i))).toArray(),
                IntStream.of(usable).mapToDouble(series::value).toArray());
    }

    private static PurgeRun run(Chamber chamber, List<FlowStep> flows, double supplyPpm, double airPpm) {
        return new PurgeRun(chamber.terms().purgedLitres().doubleValue(), flows, supplyPpm, airPpm);
    }

    /** As a meter has it where there is one; else the purge flow that the chamber is set to. */
    private List<FlowStep> flows(Chamber chamber, Moment from, Moment now) {
        List<FlowStep> measured = meter(chamber.station(), MeterQuantity.FLOW_LITRES_PER_MINUTE)
                .or(() -> readings.now(chamber.station(), MeterPlace.SUPPLY, MeterQuantity.FLOW_LITRES_PER_MINUTE))
                .map(flow -> steps(readings.series(
                        flow.meter().id(), from.elapsedMillis(), now.elapsedMillis()), from)).orElse(List.of());
        return measured.isEmpty() ? List.of(new FlowStep(
                0, chamber.terms().flows().purgeLitresPerMinute().doubleValue())) : measured;
    }

    /** Means of a measured flow over stretches of {@link #FLOW_STEP_MILLIS}. */
    static List<FlowStep> steps(Series flow, Moment from) {
        return IntStream.range(0, flow.size()).filter(flow::isUsable).boxed()
                .collect(Collectors.groupingBy(
                        i -> (flow.millis(i) - from.elapsedMillis()) / FLOW_STEP_MILLIS, TreeMap::new,
                        Collectors.averagingDouble(flow::value)))
                .entrySet().stream()
                .map(step -> new FlowStep(step.getKey() * FLOW_STEP_MILLIS / MILLIS_PER_SECOND,
                        Math.max(0, step.getValue())))
                .toList();
    }

    private static Optional<LeakExpected> leak(Chamber chamber) {
        return chamber.leak().map(test -> test.airLitresPerMinute().doubleValue()).map(leak -> new LeakExpected(
                leak, Math.max(leak * LEAK_DOUBT_SHARE, LEAK_DOUBT_MIN_LITRES_PER_MINUTE)));
    }

    private static Optional<LevelCause> cause(Purge purge, PurgeOutlook oxygen, Optional<PurgeOutlook> moisture) {
        return oxygen instanceof PurgeOutlook.LevelsOff off
                ? moisture.flatMap(PurgeCourse::fit).map(wet -> LevelCause.of(
                        off.levelPpm().value() - purge.argon().oxygenPpm().doubleValue(),
                        PurgeCourse.above(wet.levelPpm(), purge.argon().moisturePpm().doubleValue()),
                        RoomAir.WORKSHOP))
                : Optional.empty();
    }

    private Optional<MeterNow> meter(StationId chamber, MeterQuantity quantity) {
        return readings.now(chamber, MeterPlace.CHAMBER, quantity);
    }

    private static double seconds(Moment from, long millis) {
        return Duration.ofMillis(millis - from.elapsedMillis()).toMillis() / MILLIS_PER_SECOND;
    }
}

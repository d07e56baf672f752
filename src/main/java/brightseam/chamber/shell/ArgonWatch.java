package brightseam.chamber.shell;

import brightseam.chamber.ArgonDemand;
import brightseam.chamber.ArgonForecast;
import brightseam.chamber.ArgonLeft;
import brightseam.chamber.ArgonNeed;
import brightseam.chamber.ArgonOutlook;
import brightseam.chamber.ArgonPurity;
import brightseam.chamber.ArgonReading;
import brightseam.chamber.ArgonRules;
import brightseam.chamber.ArgonSource;
import brightseam.chamber.Chamber;
import brightseam.chamber.ConsumptionReport;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.ledger.Outcome;
import brightseam.ledger.Versioned;
import brightseam.people.Signer;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;

/** What is left of the argon, how long it lasts, and whether a session can be begun with it. */
@Service
public class ArgonWatch {

    /** The share of a lock's flow that counts: all of it mixes. Chambers have their own, by the fit of their purges. */
    public static final double FULL_MIXING = 1;

    private final Chambers chambers;
    private final ArgonStore store;
    private final ArgonGauges gauges;

    /** Watches the sources of {@code store} for {@code chambers}, by what {@code gauges} tell of them meanwhile. */
    ArgonWatch(Chambers chambers, ArgonStore store, ArgonGauges gauges) {
        this.chambers = chambers;
        this.store = store;
        this.gauges = gauges;
    }

    /**
     * The source as it is at {@code now}: with what a meter in the supply says, where it feeds a chamber whose only
     * connected source of its form it is and the meter's value is newer than the last reading; else as it was read.
     */
    public ArgonSource asRead(ArgonSource source, Moment now) {
        return source.connectedTo().flatMap(chambers::find).map(Versioned::state)
                .filter(chamber -> isAlone(source, chamber))
                .flatMap(chamber -> SourceReading.of(source, chamber, now,
                        quantity -> gauges.now(chamber.station(), quantity)))
                .filter(reading -> source.last().filter(last -> !reading.at().isAfter(last.at())).isEmpty())
                .map(source::with).orElse(source);
    }

    /**
     * Stores a change-over as {@link ArgonStore} does. Where nobody read the source that comes off, what the meter in
     * the supply says of it is stored with it.
     */
    public Outcome<Chamber> changeOver(ChangeOverOrder order, Origin origin, Signer signer) {
        Optional<ArgonReading> metered = order.off().flatMap(store::find).map(Versioned::state)
                .map(source -> asRead(source, origin.at())).flatMap(ArgonSource::last)
                .filter(reading -> reading.meter().isPresent());
        return store.changeOver(new ChangeOverOrder(order.station(), order.off(), order.on(),
                order.offReading().or(() -> metered), order.onReading(), order.offIsEmpty()), origin, signer);
    }

    /**
     * Counts what a session used from {@code from} to {@code to}: source by source by what was read or metered when it
     * began to feed the chamber and when it ended, and by the flow meters. What was not read stays empty.
     *
     * @param forecastStandardLitres what was forecast when its purge began
     * @return empty where no such chamber is registered
     */
    public Optional<ConsumptionReport> count(
            StationId station, SessionId session, BigDecimal forecastStandardLitres, Moment from, Moment to) {
        return chambers.find(station).map(Versioned::state).map(chamber ->
                new ArgonCount(store, gauges).of(chamber, session, forecastStandardLitres, from, to));
    }

    /**
     * What is left for the chamber of {@code station} at {@code now}: connected sources first, in the order in which
     * they were connected, then what stands by for it. A source of unknown content and one that may not be connected to
     * it is left out.
     */
    public List<ArgonLeft> left(StationId station, Moment now) {
        Optional<Chamber> chamber = chambers.find(station).map(Versioned::state);
        return chamber.map(known -> left(known, now)).orElse(List.of());
    }

    /**
     * Whether a session can be begun at {@code now} in the chamber of {@code station}.
     *
     * @param fit how long it is to be held fit; the usual time where empty
     * @param lockPasses how often the lock is purged; as usual where empty
     * @return empty where no such chamber is registered
     */
    public Optional<ArgonOutlook> outlook(StationId station, Optional<Duration> fit, Optional<Integer> lockPasses,
            Moment now) {
        return chambers.find(station).map(Versioned::state).map(chamber -> ArgonOutlook.of(chamber, left(chamber, now),
                need(chamber, fit, lockPasses), now.wall()));
    }

    /** What a session takes in {@code chamber}; as usual where {@code fit} or {@code lockPasses} is empty. */
    public ArgonNeed need(Chamber chamber, Optional<Duration> fit, Optional<Integer> lockPasses) {
        return ArgonNeed.of(chamber, worst(chamber), fit.orElse(chamber.terms().usual().fit()),
                lockPasses.orElse(chamber.terms().usual().lockPasses()));
    }

    /** How the argon goes through {@code demands} on the chamber of {@code station} from {@code now} on. */
    public ArgonForecast forecast(StationId station, List<ArgonDemand> demands, Moment now) {
        return ArgonForecast.of(left(station, now), demands, now.wall());
    }

    private List<ArgonLeft> left(Chamber chamber, Moment now) {
        List<ArgonLeft> left = new ArrayList<>();
        for (SupplyId id : chamber.connected()) {
            store.find(id).map(Versioned::state)
                    .map(source -> asRead(source, now))
                    .flatMap(source -> ArgonLeft.of(source, chamber.terms().manifold(), true, now))
                    .ifPresent(left::add);
        }
        standby(chamber, now).flatMap(source -> ArgonLeft.of(source, chamber.terms().manifold(), false, now).stream())
                .sorted(Comparator.comparing((ArgonLeft one) -> !one.liquid())
                        .thenComparing(ArgonLeft::usableStandardLitres).thenComparing(ArgonLeft::supply))
                .forEach(left::add);
        return left;
    }

    /** What could be connected at once; dewars come first, because they lose argon while they stand. */
    private Stream<ArgonSource> standby(Chamber chamber, Moment now) {
        return store.usable(now).stream()
                .filter(source -> source.connectedTo().isEmpty())
                .filter(source -> ArgonRules.connecting(source, chamber, now).isEmpty());
    }

    /** The worst of the certificates of what is connected. */
    private ArgonPurity worst(Chamber chamber) {
        List<ArgonPurity> connected = chamber.connected().stream().map(store::find).flatMap(Optional::stream)
                .map(found -> found.state().purity()).toList();
        return ArgonPurity.worst(connected);
    }

    private boolean isAlone(ArgonSource source, Chamber chamber) {
        boolean liquid = source.vessel().form().isLiquid();
        return chamber.connected().stream().filter(id -> !id.equals(source.id())).map(store::find)
                .flatMap(Optional::stream)
                .noneMatch(other -> other.state().vessel().form().isLiquid() == liquid);
    }
}

package brightseam.ui.gear;

import brightseam.chamber.ArgonDemand;
import brightseam.chamber.ArgonForecast;
import brightseam.chamber.ArgonNeed;
import brightseam.chamber.ArgonOutlook;
import brightseam.chamber.ArgonRules;
import brightseam.chamber.ArgonSource;
import brightseam.chamber.Chamber;
import brightseam.chamber.shell.ArgonStore;
import brightseam.chamber.shell.ArgonWatch;
import brightseam.chamber.shell.Chambers;
import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.kit.Kit;
import brightseam.kit.shell.Kits;
import brightseam.line.shell.Stations;
import brightseam.session.shell.Sessions;
import brightseam.supply.shell.Supplies;
import brightseam.ui.desk.Desk;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** Gathers what the page of the argon shows. */
@Component
class ArgonDesk {

    private final Chambers chambers;
    private final ArgonStore store;
    private final ArgonWatch watch;
    private final Supplies supplies;
    private final Stations stations;
    private final Kits kits;
    private final Sessions sessions;

    ArgonDesk(Chambers chambers, ArgonStore store, ArgonWatch watch, Supplies supplies, Stations stations, Kits kits,
            Sessions sessions) {
        this.chambers = chambers;
        this.store = store;
        this.watch = watch;
        this.supplies = supplies;
        this.stations = stations;
        this.kits = kits;
        this.sessions = sessions;
    }

    /** The chambers of the shop. */
    Chambers chambers() {
        return chambers;
    }

    /** The shop's argon. */
    ArgonStore store() {
        return store;
    }

    /** What is left of it. */
    ArgonWatch watch() {
        return watch;
    }

    /** The board of every chamber, sorted by label. */
    List<ArgonBoard> boards(Desk desk) {
        Moment now = desk.now();
        return chambers.all().stream().map(chamber -> board(chamber, desk, now)).toList();
    }

    /** Sources that can still be read, sorted by label. */
    List<ArgonSource> readable() {
        return store.all().stream().filter(ArgonSource::isUsable).toList();
    }

    /** What people call a source. */
    String title(SupplyId source) {
        return supplies.find(source).map(found -> found.state().title()).orElse("argon");
    }

    /** The source itself, as it was read last. */
    Optional<ArgonSource> source(SupplyId source) {
        return store.find(source).map(found -> found.state());
    }

    private ArgonBoard board(Chamber chamber, Desk desk, Moment now) {
        ArgonOutlook outlook = watch.outlook(chamber.station(), Optional.empty(), Optional.empty(), now).orElseThrow();
        List<Kit> waiting = Demands.waiting(kits.open(), kit -> sessions.ofKit(kit.id()));
        Optional<ArgonForecast> forecast = outlook.need() instanceof ArgonNeed.Needed need
                ? Optional.of(watch.forecast(chamber.station(), demands(chamber, need, waiting, now), now))
                : Optional.empty();
        int undated = (int) waiting.stream().filter(kit -> kit.sessionDue().isEmpty()).count();
        return ArgonBoard.of(new ArgonBoard.Facts(chamber.station(), station(chamber.station()), outlook, forecast,
                sentences(outlook.objections(), desk), lines(chamber, desk, now), undated),
                this::kit, now.wall(), desk.zone());
    }

    private List<ArgonDemand> demands(Chamber chamber, ArgonNeed.Needed need, List<Kit> waiting, Moment now) {
        return Demands.of(need, sessions.openAt(chamber.station()), waiting, now);
    }

    private List<SourceLine> lines(Chamber chamber, Desk desk, Moment now) {
        Stream<SourceLine> feeding = chamber.connected().stream().flatMap(id -> source(id).stream())
                .map(source -> line(chamber, source, true, desk, now));
        Stream<SourceLine> others = store.all().stream().filter(ArgonSource::isUsable)
                .filter(source -> !chamber.connected().contains(source.id()))
                .map(source -> line(chamber, source, false, desk, now))
                .sorted(Comparator.comparing(SourceLine::place).thenComparing(SourceLine::supply));
        return Stream.concat(feeding, others).toList();
    }

    private SourceLine line(Chamber chamber, ArgonSource source, boolean connected, Desk desk, Moment now) {
        List<Refusal> against = new ArrayList<>(store.objections(source.id(), now));
        against.addAll(ArgonRules.connecting(source, chamber, now));
        return SourceLine.of(watch.asRead(source, now), title(source.id()), connected, sentences(against, desk),
                chamber.terms().manifold(), now, desk.zone());
    }

    private static List<String> sentences(List<? extends Refusal> refusals, Desk desk) {
        return refusals.stream().map(desk.wording()::explain).map(told -> told.reason()).distinct().toList();
    }

    private String station(StationId id) {
        return stations.find(id).map(found -> found.state().title()).orElse("");
    }

    private String kit(KitId id) {
        return kits.find(id).map(found -> found.state().title()).orElse("");
    }
}

package brightseam.traveller.shell;

import brightseam.kernel.BinId;
import brightseam.kernel.ContactKind;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Prepared;
import brightseam.line.Bath;
import brightseam.line.BathCommand;
import brightseam.line.BathRefusal;
import brightseam.line.LoadTaken;
import brightseam.line.shell.Baths;
import brightseam.line.shell.Stations;
import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import brightseam.traveller.Contact;
import brightseam.traveller.Guide;
import brightseam.traveller.Placement;
import brightseam.traveller.StepRun;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerCommand;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/**
 * What a step in a tank asks of the tank's bath. A tank without a registered bath asks nothing.
 *
 * <p>Pieces that come out of a soak over a running gap go into the rinse whatever its bath is like, because acid that
 * stays on them is worse; that it was not fit is written down with the load, and a nonconformance opened.
 */
@Component
class Immersion {

    private static final Set<StepKind> IN_THE_BATH = EnumSet.of(StepKind.SOAK, StepKind.RINSE, StepKind.DRY);

    private final Baths baths;
    private final Stations stations;
    private final Travellers travellers;
    private final RoomAhead ahead;
    private final LotSizes sizes;

    Immersion(Baths baths, Stations stations, Travellers travellers, RoomAhead ahead, LotSizes sizes) {
        this.baths = baths;
        this.stations = stations;
        this.travellers = travellers;
        this.ahead = ahead;
        this.sizes = sizes;
    }

    /** What the bath writes down when {@code ids} begin {@code step} at {@code station}, or what it refuses. */
    Prepared<?> takeIn(Origin origin, Collection<TravellerId> ids, StepId step, Optional<StationId> station) {
        List<Card> fresh = ids.stream().map(travellers::find).flatMap(Optional::stream)
                .filter(card -> card.traveller().run(step).isEmpty()).toList();
        Optional<Bath> bath = fresh.isEmpty() ? Optional.empty()
                : station.flatMap(tank -> bath(tank, fresh.getFirst().procedure().find(step)));
        if (bath.isEmpty()) {
            return Transactions.nothing();
        }
        boolean cannotWait = fresh.stream().anyMatch(card -> cannotWait(card.traveller(), card.procedure(), step));
        Set<BinId> going = new TreeSet<>();
        List<Function<Bath, BathCommand.TakeIn>> loads = new ArrayList<>();
        baskets(fresh).forEach((basket, lots) -> {
            Set<BinId> before = Set.copyOf(going);
            loads.add(tank -> new BathCommand.TakeIn(tank.station(), basket, lots, sizes.areaSquareMetres(lots),
                    Stream.concat(stillInside(tank).stream(), before.stream()).collect(Collectors.toSet()),
                    cannotWait, origin));
            going.add(basket);
        });
        Prepared<?> taken = baths.takeIn(bath.get().station(), loads);
        List<Refusal> nowhere = fresh.stream().filter(card -> card.procedure().find(step).isPresent())
                .flatMap(card -> ahead.missing(card.procedure(), step, origin.at()).stream()).distinct().toList();
        return nowhere.isEmpty() ? taken : taken.with(new Prepared.Refused<>(nowhere), (one, other) -> one);
    }

    /** What stands against the hold of {@code step}, which has begun: the bath may have been locked meanwhile. */
    Prepared<?> holdMayBegin(Origin origin, Collection<TravellerId> ids, StepId step) {
        List<Refusal> against = ids.stream().map(travellers::find).flatMap(Optional::stream)
                .filter(card -> !cannotWait(card.traveller(), card.procedure(), step))
                .flatMap(card -> card.traveller().run(step).flatMap(StepRun::station)
                        .flatMap(tank -> bath(tank, card.procedure().find(step))).stream())
                .distinct()
                .flatMap(bath -> bath.objections(origin.at()).stream())
                .filter(refusal -> !countsThisLoad(refusal))
                .<Refusal>map(refusal -> refusal).toList();
        return against.isEmpty() ? Transactions.nothing() : new Prepared.Refused<>(against);
    }

    /** The fill that touches the pieces at {@code step}. */
    List<Contact> touching(Optional<StationId> station, Optional<Step> step) {
        return station.flatMap(tank -> bath(tank, step)).map(bath -> new Contact(ContactKind.BATH,
                bath.liquid().name().toLowerCase(Locale.ROOT).replace('_', '-'), bath.station().value(),
                "fill " + bath.fill().number())).stream().toList();
    }

    /** The report that goes with a rinse in a bath that is not fit; empty where nothing has to be reported. */
    Optional<TravellerCommand> report(
            Origin origin, Traveller traveller, Procedure procedure, StepId step, Optional<StationId> station) {
        return station.filter(tank -> traveller.run(step).isEmpty() && cannotWait(traveller, procedure, step))
                .flatMap(tank -> bath(tank, procedure.find(step)))
                .map(bath -> bath.objections(origin.at()))
                .filter(against -> !against.isEmpty())
                .map(against -> new TravellerCommand.ReportNonconformance(origin, traveller.pieces(),
                        "Rinsed in " + station.get() + " although its bath was not fit ("
                                + against.stream().map(refusal -> refusal.code().replace('-', ' '))
                                .distinct().collect(Collectors.joining(", ")) + "): what was on them could not wait"));
    }

    private Optional<Bath> bath(StationId tank, Optional<Step> step) {
        return step.filter(done -> IN_THE_BATH.contains(done.kind()) && stations.find(tank)
                        .filter(found -> found.state().stationClass().equals(done.station())).isPresent())
                .flatMap(done -> baths.find(tank)).map(found -> found.state());
    }

    private static boolean countsThisLoad(BathRefusal refusal) {
        return refusal instanceof BathRefusal.BathLoadsUsedUp || refusal instanceof BathRefusal.BathAreaUsedUp;
    }

    private static boolean cannotWait(Traveller traveller, Procedure procedure, StepId step) {
        return procedure.find(step).filter(next -> next.kind() == StepKind.RINSE).isPresent()
                && Guide.gap(traveller, procedure).filter(gap -> gap.to().equals(step)
                        && procedure.step(gap.from()).kind() == StepKind.SOAK).isPresent();
    }

    private static Map<BinId, TreeSet<TravellerId>> baskets(List<Card> load) {
        Map<BinId, TreeSet<TravellerId>> baskets = new TreeMap<>();
        load.forEach(card -> card.traveller().placement().map(Placement::bin).ifPresent(basket ->
                baskets.computeIfAbsent(basket, none -> new TreeSet<>()).add(card.id())));
        return baskets;
    }

    /** The baskets of which a piece has not come out of the tank, by the records of what went in. */
    Set<BinId> stillInside(Bath bath) {
        return bath.inside().stream()
                .filter(load -> load.travellers().stream().anyMatch(id -> isInside(id, bath.station())))
                .map(LoadTaken::basket).collect(Collectors.toSet());
    }

    private boolean isInside(TravellerId id, StationId tank) {
        return travellers.find(id).filter(card -> !card.traveller().hasEnded()).stream()
                .anyMatch(card -> card.traveller().runs().values().stream()
                        .filter(run -> run.station().filter(tank::equals).isPresent())
                        .anyMatch(run -> isInside(card.procedure().step(run.step()), run)));
    }

    private static boolean isInside(Step step, StepRun run) {
        return IN_THE_BATH.contains(step.kind())
                && (step.hold().isPresent() ? run.holdEndedAt().isEmpty() : !run.isSigned());
    }
}

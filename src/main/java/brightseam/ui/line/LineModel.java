package brightseam.ui.line;

import brightseam.kernel.BinId;
import brightseam.kernel.Moment;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.line.Station;
import brightseam.procedure.BinClass;
import brightseam.procedure.Hold;
import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import brightseam.procedure.Vocabulary;
import brightseam.traveller.GapClock;
import brightseam.traveller.Guide;
import brightseam.traveller.LoadLimits;
import brightseam.traveller.NextAction;
import brightseam.traveller.Placement;
import brightseam.traveller.StepRun;
import brightseam.traveller.shell.Card;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What the line view shows, made from the registers and the travellers that have not ended. */
final class LineModel {

    private static final Set<StepKind> WET = EnumSet.of(StepKind.SOAK, StepKind.RINSE, StepKind.DRY);
    /** A longer gap leaves the line: the board shows it. Common practice, from memory. */
    private static final Duration BETWEEN_MAX = Duration.ofMinutes(30);

    private final Vocabulary vocabulary;
    private final Collection<Procedure> routes;

    /** @param routes the procedures whose routes give the order of the stations */
    LineModel(Vocabulary vocabulary, Collection<Procedure> routes) {
        this.vocabulary = vocabulary;
        this.routes = routes;
    }

    /** One open passage of one traveller through a step. */
    private record Open(Card card, StepRun run) {

        Step step() {
            return card.procedure().step(run.step());
        }
    }

    private record Key(String load, StepId step) {}

    /** Every tank and dryer in the order of the route, then by label. */
    List<PlaceRow> places(List<Station> stations, List<Card> cards, Moment now) {
        Map<StationId, List<Open>> open = new LinkedHashMap<>();
        cards.forEach(card -> card.traveller().runs().values().stream()
                .filter(run -> isAtIt(card.procedure().step(run.step()), run))
                .forEach(run -> run.station().ifPresent(station ->
                        open.computeIfAbsent(station, none -> new ArrayList<>()).add(new Open(card, run)))));
        return stations.stream().filter(this::isWet)
                .sorted(Comparator.comparing(this::place).thenComparing(Station::id))
                .map(station -> row(station, open.getOrDefault(station.id(), List.of()), now)).toList();
    }

    /** Loads that a gap hurries from one step to the next, the most hurried first. */
    List<BetweenRow> between(List<Card> cards) {
        Map<Key, List<Card>> groups = new LinkedHashMap<>();
        cards.forEach(card -> gap(card).ifPresent(gap -> groups.computeIfAbsent(
                new Key(load(card), gap.to()), none -> new ArrayList<>()).add(card)));
        return groups.values().stream().map(LineModel::row).sorted(Comparator.comparing(BetweenRow::latest))
                .toList();
    }

    private static BetweenRow row(List<Card> load) {
        Card first = load.getFirst();
        GapClock gap = load.stream().flatMap(card -> gap(card).stream())
                .min(Comparator.comparing(GapClock::latest)).orElseThrow();
        return new BetweenRow(load(first), load.stream().map(Card::id).sorted().toList(),
                words(first.procedure().step(gap.to())), gap.since(), gap.latest());
    }

    private static Optional<GapClock> gap(Card card) {
        boolean waits = card.next() instanceof NextAction.AwaitDisposition;
        return Guide.gap(card.traveller(), card.procedure()).filter(gap -> !waits)
                .filter(gap -> gap.latest().since(gap.since()).compareTo(BETWEEN_MAX) <= 0)
                .filter(gap -> card.traveller().run(gap.to()).isEmpty());
    }

    private static boolean isAtIt(Step step, StepRun run) {
        return step.hold().isPresent() ? run.holdEndedAt().isEmpty() : !run.isSigned();
    }

    private boolean isWet(Station station) {
        Vocabulary.StationClass known = vocabulary.stations().get(station.stationClass());
        return known != null && !Collections.disjoint(known.kinds(), WET);
    }

    /** Where the routes come to stations of this class first; behind all of them where none does. */
    private int place(Station station) {
        return routes.stream().flatMap(route -> route.steps().stream()
                        .filter(step -> step.station().equals(station.stationClass())).map(Step::id)
                        .map(route::position)).min(Comparator.naturalOrder()).orElse(Integer.MAX_VALUE);
    }

    private PlaceRow row(Station station, List<Open> open, Moment now) {
        Map<Key, List<Open>> loads = new LinkedHashMap<>();
        open.forEach(one -> loads.computeIfAbsent(
                new Key(load(one.card()), one.run().step()), none -> new ArrayList<>()).add(one));
        List<PlaceRow.Inside> inside = loads.values().stream().map(load -> inside(load, now))
                .sorted(Comparator.comparing(PlaceRow.Inside::standing).thenComparing(PlaceRow.Inside::since)).toList();
        return new PlaceRow(station.id(), station.title(), vocabulary.stations().get(station.stationClass()).name(),
                station.outOfUseReason(), inside);
    }

    private static PlaceRow.Inside inside(List<Open> load, Moment now) {
        Open first = load.getFirst();
        Optional<Hold> hold = LoadLimits.tightest(load.stream().map(Open::step).toList()).orElse(first.step()).hold();
        Optional<Moment> begun = first.run().holdBegunAt();
        Optional<Moment> earliest = begun.flatMap(at -> hold.map(held -> at.plus(held.minimum())));
        Optional<Moment> latest = begun.flatMap(at -> hold.flatMap(Hold::maximum).map(at::plus));
        return new PlaceRow.Inside(standing(earliest, latest, now), load(first.card()),
                load.stream().map(one -> one.card().id()).sorted().toList(),
                load.stream().mapToInt(one -> one.card().traveller().pieces().size()).sum(), words(first.step()),
                begun.orElse(first.run().startedAt()), earliest, latest);
    }

    private static PlaceRow.Standing standing(Optional<Moment> earliest, Optional<Moment> latest, Moment now) {
        if (latest.filter(now::isAfter).isPresent()) {
            return PlaceRow.Standing.OVERRUN;
        }
        return earliest.map(at -> now.isBefore(at) ? PlaceRow.Standing.HELD : PlaceRow.Standing.READY)
                .orElse(PlaceRow.Standing.BEGUN);
    }

    private static String load(Card card) {
        return card.traveller().placement().filter(where -> where.binClass() == BinClass.PROCESS_BASKET)
                .map(Placement::bin).map(BinId::value).orElse(card.id().value());
    }

    private static String words(Step step) {
        return step.number() + " " + step.title();
    }
}

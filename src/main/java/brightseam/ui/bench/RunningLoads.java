package brightseam.ui.bench;

import brightseam.kernel.BadgeId;
import brightseam.kernel.BinId;
import brightseam.kernel.Moment;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.procedure.BinClass;
import brightseam.procedure.Gap;
import brightseam.procedure.Hold;
import brightseam.procedure.Step;
import brightseam.procedure.Vocabulary;
import brightseam.traveller.GapClock;
import brightseam.traveller.Guide;
import brightseam.traveller.NextAction;
import brightseam.traveller.Placement;
import brightseam.traveller.StepRun;
import brightseam.traveller.shell.Card;
import brightseam.words.Words;
import java.time.Duration;
import java.time.ZoneId;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds every load in the shop with a clock on it: what is held, and what has to go on in time. */
final class RunningLoads {

    /** A longer gap is no clock that hands watch: it is the board's. Common practice, from memory. */
    private static final Duration WATCHED_MAX = Duration.ofMinutes(30);

    private final Vocabulary vocabulary;
    private final ZoneId zone;
    private final Moment now;

    RunningLoads(Vocabulary vocabulary, ZoneId zone, Moment now) {
        this.vocabulary = vocabulary;
        this.zone = zone;
        this.now = now;
    }

    /** Travellers of one basket that one clock runs on. */
    private record Key(String label, StepId step, boolean held) {}

    /** Those of {@code cards} without {@code but}: {@code badge}'s own first, each part by urgency. */
    List<Running> of(List<Card> cards, BadgeId badge, Collection<TravellerId> but) {
        Map<Key, List<Card>> groups = new LinkedHashMap<>();
        cards.stream().filter(card -> !but.contains(card.id())).forEach(card -> key(card).ifPresent(key ->
                groups.merge(key, List.of(card), (some, more) ->
                        Stream.concat(some.stream(), more.stream()).toList())));
        return groups.entrySet().stream().map(group -> running(group.getKey(), group.getValue()))
                .sorted(Comparator.comparing((Running one) -> !one.by().equals(badge))
                        .thenComparing(Running.byUrgency(now)))
                .toList();
    }

    private static Optional<Key> key(Card card) {
        Optional<StepRun> held = held(card);
        return held.isPresent() ? held.map(run -> new Key(label(card), run.step(), true))
                : gap(card).map(gap -> new Key(label(card), gap.to(), false));
    }

    private static Optional<StepRun> held(Card card) {
        return card.traveller().runs().values().stream().filter(StepRun::isHolding).findFirst();
    }

    private static Optional<GapClock> gap(Card card) {
        boolean waits = card.next() instanceof NextAction.AwaitDisposition;
        return Guide.gap(card.traveller(), card.procedure()).filter(gap -> !waits)
                .filter(gap -> gap.latest().since(gap.since()).compareTo(WATCHED_MAX) <= 0);
    }

    private static String label(Card card) {
        return basket(card).map(BinId::value).orElse(card.id().value());
    }

    private static Optional<BinId> basket(Card card) {
        return card.traveller().placement().filter(place -> place.binClass() == BinClass.PROCESS_BASKET)
                .map(Placement::bin);
    }

    private Running running(Key key, List<Card> cards) {
        Load load = new Load(key.label(), basket(cards.getFirst()), cards, List.of());
        Step step = load.step(key.step());
        return key.held() ? held(load, step) : hurried(load, step);
    }

    private Running held(Load load, Step step) {
        StepRun run = held(load.first()).orElseThrow();
        Moment begun = run.holdBegunAt().orElseThrow();
        Hold hold = step.hold().orElseThrow();
        Doing.Holding says = (Doing.Holding) new DoingWriter(vocabulary, zone, load, now).write(
                new NextAction.Holding(step, begun, begun.plus(hold.minimum()), hold.maximum().map(begun::plus)),
                MadeReady.NOTHING);
        return new Running(load.label(), about(load, run), new Running.Held(load.label() + " · " + step.title(), hold,
                begun, says.atMinimum(), says.atMaximum()), run.startedBy());
    }

    private Running hurried(Load load, Step next) {
        GapClock gap = load.gap().orElseThrow();
        StepRun from = load.first().traveller().run(gap.from()).orElseThrow();
        return new Running(load.label(), about(load, from), new Running.Hurried(load.label() + " · " + next.title(),
                new Gap(gap.latest().since(gap.since()), gap.reason()), gap.since()), from.startedBy());
    }

    private static String about(Load load, StepRun run) {
        long pieces = load.together().stream().mapToLong(card -> card.traveller().pieces().size()).sum();
        return run.station().map(station -> station + " · ").orElse("")
                + (load.together().size() > 2 ? load.together().size() + " travellers"
                        : load.ids().stream().map(Object::toString).collect(Collectors.joining(", ")))
                + " · " + Words.count(pieces, "piece", "pieces");
    }
}

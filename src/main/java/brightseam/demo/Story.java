package brightseam.demo;

import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.DemoClock;
import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import brightseam.traveller.GapClock;
import brightseam.traveller.LoadLimits;
import brightseam.traveller.NextAction;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.Travellers;
import java.time.Duration;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;

/**
 * An automatic fabricator, with an inspector beside it: does one after another what the card says is to be done now,
 * and lets the demo clock skip what that takes. What waits for the chamber is taken through a whole session at once.
 * Not safe for several threads at once, since they share the clock.
 */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
public final class Story {

    private static final int ACTIONS_MAX = 1_000;
    /** Whoever has this long before the next step must begin signs first what is finished. */
    private static final Duration TIME_TO_SIGN = Duration.ofMinutes(5);

    private final Travellers travellers;
    private final Hands hands;
    private final ChamberHands chamber;
    private final Welding welding;
    private final DemoClock clock;

    Story(Travellers travellers, Hands hands, ChamberHands chamber, Welding welding, DemoClock clock) {
        this.travellers = travellers;
        this.hands = hands;
        this.chamber = chamber;
        this.welding = welding;
        this.clock = clock;
    }

    /**
     * Does everything up to {@code until}: the pieces lie in a bin that suits it; it is to be begun or stamped next.
     *
     * @throws IllegalStateException where something is refused, or the traveller ends or is quarantined before
     */
    public void advance(TravellerId traveller, StepId until) {
        advance(List.of(traveller), until);
    }

    /** As {@link #advance(TravellerId, StepId)}, for a load that goes together. */
    public void advance(Collection<TravellerId> load, StepId until) {
        advance(load, action -> Hands.step(action).filter(step -> step.id().equals(until)).isPresent()
                && !(action instanceof NextAction.PutInto) && !(action instanceof NextAction.CloseBin));
    }

    /** Does everything until {@code enough} holds of the next action of every traveller of the load. */
    public void advance(Collection<TravellerId> load, Predicate<NextAction> enough) {
        for (int actions = 0; actions < ACTIONS_MAX; actions++) {
            List<Card> waiting = load.stream().map(this::card).filter(card -> !enough.test(card.next())).toList();
            if (waiting.isEmpty()) {
                return;
            }
            NextAction next = waiting.getFirst().next();
            act(next, waiting.stream().filter(card -> isAlike(next, card.next())).toList());
        }
        throw new IllegalStateException("does not come to an end: " + load);
    }

    /** Does everything until nothing is left to do. */
    public void finish(TravellerId traveller) {
        finish(List.of(traveller));
    }

    /** As {@link #finish(TravellerId)}, for a load. */
    public void finish(Collection<TravellerId> load) {
        advance(load, action -> action instanceof NextAction.Ended);
    }

    /** Lets {@code duration} pass. */
    public void pass(Duration duration) {
        clock.skip(duration.isNegative() ? Duration.ZERO : duration);
    }

    /** Lets time pass until {@code moment}; none where that is past. */
    public void passUntil(Moment moment) {
        pass(moment.since(clock.now()));
    }

    /** How the traveller stands. */
    Card card(TravellerId id) {
        return travellers.find(id).orElseThrow(() -> new IllegalStateException("no traveller " + id));
    }

    private static boolean isAlike(NextAction one, NextAction other) {
        return one.getClass() == other.getClass() && Hands.step(one).equals(Hands.step(other))
                || isTogether(one, other);
    }

    /** Whether hands see the same thing to do, though two procedures ask for it. */
    private static boolean isTogether(NextAction one, NextAction other) {
        boolean sameReading = !(one instanceof NextAction.Read read) || other instanceof NextAction.Read too
                && read.reading().id().equals(too.reading().id());
        return one.getClass() == other.getClass() && sameReading && one.about().flatMap(step ->
                other.about().filter(same -> LoadLimits.isSame(step, same))).isPresent();
    }

    private void act(NextAction next, List<Card> load) {
        if (hasTimeToSign(next) && hands.sign(load, next, this::pass)) {
            return;
        }
        if (next instanceof NextAction.AwaitSession) {
            chamber(load);
            return;
        }
        if (next instanceof NextAction.AwaitStamp await && isBehindWelding(load.getFirst(), await.step())) {
            kits(load).keySet().forEach(welding::judgeAll);
        }
        hands.act(next, load, this::pass);
        if (next instanceof NextAction.Holding holding) {
            load.forEach(card -> passUntil(goodEnd(card.next())));
            hands.endHold(holding.step(), load);
        }
    }

    /** A whole session of each kit, with these and nothing else of it. */
    private void chamber(List<Card> load) {
        kits(load).forEach((kit, cards) -> chamber.play(kit, cards.stream().map(Card::id).toList()));
    }

    private static boolean isBehindWelding(Card card, Step stamped) {
        Procedure procedure = card.procedure();
        return procedure.steps().stream().anyMatch(step -> step.kind() == StepKind.WELD && step.inSession()
                && procedure.position(step.id()) < procedure.position(stamped.id()));
    }

    private static Map<KitId, List<Card>> kits(List<Card> load) {
        return load.stream().collect(Collectors.groupingBy(
                card -> card.traveller().kit(), TreeMap::new, Collectors.toList()));
    }

    private boolean hasTimeToSign(NextAction next) {
        Moment now = clock.now();
        Optional<Moment> ends = next instanceof NextAction.Holding holding ? Optional.of(holding.earliest())
                : gap(next).map(GapClock::latest);
        return ends.filter(end -> end.since(now).compareTo(TIME_TO_SIGN) >= 0).isPresent();
    }

    private static Optional<GapClock> gap(NextAction next) {
        return switch (next) {
            case NextAction.PutInto put -> put.gap();
            case NextAction.Begin begin -> begin.gap();
            case NextAction.Read read -> read.gap();
            case NextAction.BeginHold begin -> begin.gap();
            case NextAction.CloseBin close -> Optional.empty();
            case NextAction.Holding holding -> Optional.empty();
            case NextAction.Sign sign -> Optional.empty();
            case NextAction.AwaitStamp await -> Optional.empty();
            case NextAction.AwaitSession await -> Optional.empty();
            case NextAction.AwaitDisposition await -> Optional.empty();
            case NextAction.Ended ended -> Optional.empty();
        };
    }

    /** A quarter of the way from the earliest to the latest end, or a little after the earliest. */
    private Moment goodEnd(NextAction next) {
        if (!(next instanceof NextAction.Holding holding)) {
            return clock.now();
        }
        return holding.earliest().plus(holding.latest()
                .map(latest -> latest.since(holding.earliest()).dividedBy(4)).orElse(Duration.ofSeconds(20)));
    }
}

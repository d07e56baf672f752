package brightseam.ui.board;

import brightseam.kernel.Moment;
import brightseam.kit.Kit;
import brightseam.traveller.Guide;
import brightseam.traveller.NextAction;
import brightseam.traveller.Phase;
import brightseam.traveller.Window;
import brightseam.traveller.shell.Card;
import brightseam.words.Wording;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What runs out on a traveller, the nearest first. */
final class Countdowns {

    private Countdowns() {}

    static List<Countdown> of(Card card, Optional<Kit> kit, Moment now) {
        List<Countdown> all = new ArrayList<>();
        hold(card, now).ifPresent(all::add);
        Guide.gap(card.traveller(), card.procedure()).map(gap -> new Countdown(Countdown.Kind.GAP,
                card.procedure().step(gap.to()).title() + " has to begin", gap.latest().since(now)))
                .ifPresent(all::add);
        window(card, now).ifPresent(all::add);
        if (card.traveller().phase() == Phase.ACTIVE) {
            kit.flatMap(found -> session(found, now)).ifPresent(all::add);
        }
        return all.stream().sorted().toList();
    }

    static Optional<Countdown> session(Kit kit, Moment now) {
        return kit.sessionDue().map(due -> new Countdown(Countdown.Kind.SESSION,
                "Session of " + kit.id() + " due", Duration.between(now.wall(), due)));
    }

    private static Optional<Countdown> hold(Card card, Moment now) {
        return card.next() instanceof NextAction.Holding holding
                ? holding.latest().map(latest -> new Countdown(Countdown.Kind.HOLD,
                        holding.step().title() + " over its maximum", latest.since(now)))
                : Optional.empty();
    }

    private static Optional<Countdown> window(Card card, Moment now) {
        return card.traveller().window() instanceof Window.Open open
                ? Optional.of(new Countdown(Countdown.Kind.WINDOW,
                        "Clean window closes (" + Wording.words(open.handling().name()) + ")", open.remaining(now)))
                : Optional.empty();
    }
}

package brightseam.ui.bench;

import brightseam.kernel.BadgeId;
import brightseam.kernel.BinId;
import brightseam.kernel.Moment;
import brightseam.kernel.TravellerId;
import brightseam.procedure.BinClass;
import brightseam.procedure.Hold;
import brightseam.procedure.Step;
import brightseam.traveller.Placement;
import brightseam.traveller.StepRun;
import brightseam.traveller.shell.Card;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Which holds run in the shop, and what somebody has under way; from what is in memory. */
final class Holds {

    private static final int UNDER_WAY_MAX = 5;

    private Holds() {}

    /**
     * One hold that runs, of a basket or of a single traveller.
     *
     * @param label what opens its card
     * @param words the basket or traveller, and the step
     * @param by whose badge began it
     */
    record Running(String label, String words, Moment begun, Hold hold, BadgeId by) {}

    /** Something under way: its label, and where it stands in words. */
    record UnderWay(String label, String words) {}

    /** Every hold that runs in {@code cards}, without those of {@code but}; {@code badge}'s own first, oldest first. */
    static List<Running> running(List<Card> cards, BadgeId badge, Collection<TravellerId> but) {
        return cards.stream().filter(card -> !but.contains(card.id()))
                .flatMap(card -> card.traveller().runs().values().stream().filter(StepRun::isHolding)
                        .map(run -> of(card, run)))
                .distinct()
                .sorted(Comparator.comparing((Running hold) -> !hold.by().equals(badge)).thenComparing(Running::begun))
                .toList();
    }

    private static Running of(Card card, StepRun run) {
        Step step = card.procedure().step(run.step());
        String label = card.traveller().placement().filter(place -> place.binClass() == BinClass.PROCESS_BASKET)
                .map(Placement::bin).map(BinId::value).orElse(card.id().value());
        return new Running(label, label + " · " + step.title(), run.holdBegunAt().orElseThrow(),
                step.hold().orElseThrow(), run.startedBy());
    }

    /** What {@code badge} did something on last, latest first. */
    static List<UnderWay> underWay(List<Card> cards, BadgeId badge) {
        return cards.stream().filter(card -> last(card, badge).isPresent())
                .sorted(Comparator.comparing((Card card) -> last(card, badge).orElseThrow()).reversed())
                .limit(UNDER_WAY_MAX)
                .map(card -> new UnderWay(card.id().value(), card.id() + " · " + card.traveller().part().description()
                        + " · " + card.currentStep().map(step -> "step " + step.number() + " " + step.title())
                                .orElse("all signed")))
                .toList();
    }

    private static Optional<Moment> last(Card card, BadgeId badge) {
        return card.traveller().runs().values().stream().flatMap(run -> Stream.concat(
                        Stream.of(run.startedAt()).filter(at -> run.startedBy().equals(badge)),
                        run.signedAt().filter(at -> run.signature().filter(mark ->
                                mark.signer().badge().equals(badge)).isPresent()).stream()))
                .max(Comparator.naturalOrder());
    }
}

package brightseam.ui.bench;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Moment;
import brightseam.traveller.StepRun;
import brightseam.traveller.shell.Card;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What somebody has under way; from what is in memory. */
final class Work {

    private static final int UNDER_WAY_MAX = 5;

    private Work() {}

    /** Something under way: its label, and where it stands in words. */
    record UnderWay(String label, String words) {}

    /** What {@code badge} did something on last, latest first, without what lies in one of {@code running}. */
    static List<UnderWay> underWay(List<Card> cards, BadgeId badge, List<Running> running) {
        Set<String> shown = running.stream().map(Running::label).collect(Collectors.toSet());
        return cards.stream().filter(card -> last(card, badge).isPresent())
                .filter(card -> !shown.contains(card.id().value()) && card.traveller().placement()
                        .filter(place -> shown.contains(place.bin().value())).isEmpty())
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

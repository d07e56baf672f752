package brightseam.ui.trace;

import brightseam.kernel.Moment;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.traveller.Guide;
import brightseam.traveller.Nonconformance;
import brightseam.traveller.StepRun;
import brightseam.traveller.shell.Card;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Everybody who is under suspicion for one reason.
 *
 * @param reason as it stands in the records
 * @param all who, sorted by label
 */
record Suspects(String reason, List<One> all) {

    /** One of them, with the nonconformance that says so. */
    record One(Card card, Nonconformance open) {

        TravellerId id() {
            return card.id();
        }

        /** Whether a hold runs, so that nothing can be decided before it has ended. */
        boolean isHolding() {
            return card.traveller().runs().values().stream().anyMatch(StepRun::isHolding);
        }

        Set<StepId> returns() {
            return new LinkedHashSet<>(Guide.returns(card.traveller(), card.procedure(), open));
        }
    }

    /** Those among {@code cards} by reason, what was suspected last first. */
    static List<Suspects> among(Collection<Card> cards) {
        Map<String, List<One>> byReason = new LinkedHashMap<>();
        cards.stream().flatMap(card -> card.traveller().openNonconformances().stream()
                        .filter(open -> open.cause() == Nonconformance.Cause.SUSPECT).map(open -> new One(card, open)))
                .sorted(Comparator.comparing((One one) -> one.id()))
                .forEach(one -> byReason.computeIfAbsent(one.open().text(), reason -> new ArrayList<>()).add(one));
        return byReason.entrySet().stream().map(entry -> new Suspects(entry.getKey(), List.copyOf(entry.getValue())))
                .sorted(Comparator.comparing(Suspects::since).reversed()).toList();
    }

    /** When the last of them came under suspicion. */
    Moment since() {
        return all.stream().map(one -> one.open().openedAt()).max(Comparator.naturalOrder()).orElseThrow();
    }

    /** Steps that rework may return every one of {@code chosen} to; none where there is no such step. */
    static List<StepId> returns(Collection<One> chosen) {
        Set<StepId> common = chosen.stream().findFirst().map(One::returns).orElse(Set.of());
        chosen.forEach(one -> common.retainAll(one.returns()));
        return List.copyOf(common);
    }
}

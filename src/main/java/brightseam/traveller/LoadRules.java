package brightseam.traveller;

import brightseam.kernel.BinId;
import brightseam.kernel.Refusal;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.procedure.Gap;
import brightseam.procedure.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Rules that only exist for a load. Each traveller is decided by its own procedure besides. Pieces that must not wait,
 * because a gap runs to a step that makes them safe, are never held up by any of these.
 */
public final class LoadRules {

    private LoadRules() {}

    /**
     * What stands against {@code load} going through {@code step} together.
     *
     * @param load what is to go in, at least one
     * @param left what else lies in the same baskets
     */
    public static List<Refusal> together(StepId step, List<LoadMember> load, List<LoadMember> left) {
        if (load.stream().anyMatch(member -> member.cannotWait(step))) {
            return List.of();
        }
        List<Refusal> broken = new ArrayList<>();
        left.forEach(member -> broken.add(leftInBasket(step, member)));
        broken.addAll(LoadFit.broken(step, load));
        return broken;
    }

    /**
     * What stands against {@code coming} being put into {@code basket}, in which {@code inside} lie: nothing joins what
     * is in a bath, and nothing that could not go on with it. What waits for a disposition may lie together.
     */
    public static List<Refusal> joining(BinId basket, List<LoadMember> coming, List<LoadMember> inside) {
        Optional<LoadMember> holding = inside.stream().filter(LoadMember::isHolding).findFirst();
        if (holding.isPresent()) {
            return List.of(new LoadRefusal.BasketHolds(basket, holding.get().id(), holding.get().stands().id()));
        }
        return coming.stream().flatMap(member -> inside.stream().filter(other -> !fits(member, other)).limit(1)
                .<Refusal>map(other -> elsewhere(basket, member, other))).toList();
    }

    private static boolean fits(LoadMember coming, LoadMember inside) {
        boolean stopped = coming.traveller().isInQuarantine();
        return stopped == inside.traveller().isInQuarantine()
                && (stopped || LoadLimits.isSame(coming.stands(), inside.stands()));
    }

    private static Refusal elsewhere(BinId basket, LoadMember coming, LoadMember inside) {
        Step theirs = inside.stands();
        Step own = coming.stands();
        return new LoadRefusal.BasketAtAnotherStep(basket, inside.id(), theirs.number(), theirs.title(), coming.id(),
                own.number(), own.title());
    }

    private static Refusal leftInBasket(StepId step, LoadMember member) {
        Step stands = member.stands();
        return new LoadRefusal.LeftInBasket(
                member.basket().orElseThrow(), member.id(), stands.number(), stands.title(), step);
    }

    /** The gap behind {@code steps} that leaves no time to part them, where there is one. */
    static Optional<Gap> hurry(List<Step> steps) {
        return steps.stream().flatMap(step -> step.gap().stream())
                .filter(gap -> gap.maximum().compareTo(Guide.HURRY_MAX) <= 0)
                .min(Comparator.comparing(Gap::maximum));
    }

    /** Labels of {@code members}. */
    static List<TravellerId> ids(List<LoadMember> members) {
        return members.stream().map(LoadMember::id).sorted().toList();
    }
}

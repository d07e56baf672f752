package brightseam.line;

import brightseam.kernel.BinId;
import brightseam.kernel.Limits;
import brightseam.kernel.Moment;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What keeps loads out of a bath, each rule by itself. */
final class BathRules {

    private final Bath bath;

    BathRules(Bath bath) {
        this.bath = bath;
    }

    List<BathRefusal> objections(Moment now) {
        List<BathRefusal> all = new ArrayList<>();
        bath.locks().stream().filter(lock -> lock.cause() != BathLock.Cause.OUT_OF_LIMITS)
                .map(this::locked).forEach(all::add);
        List<BathRefusal> outside = outOfLimits();
        all.addAll(outside);
        if (outside.isEmpty()) {
            bath.lock(BathLock.Cause.OUT_OF_LIMITS).map(this::lockedByAnalysis).ifPresent(all::add);
        }
        if (bath.isAnalysed() && bath.lastGood().isEmpty() && bath.lastAnalysis().isEmpty()) {
            all.add(new BathRefusal.BathNeverAnalysed(bath.station(), bath.fill().number()));
        }
        bath.strengthenedAt().map(at -> new BathRefusal.BathStrengthened(bath.station(), at)).ifPresent(all::add);
        bath.lastGood().ifPresent(good -> all.addAll(overdue(good, now)));
        return all;
    }

    /** Whether there is no room, where {@code stillInside} are the baskets that have not left. */
    Optional<BathRefusal> occupied(BinId basket, java.util.Set<BinId> stillInside) {
        List<BinId> others = others(basket, stillInside);
        return others.size() < bath.basketsAtOnce() ? Optional.empty()
                : Optional.of(new BathRefusal.TankOccupied(bath.station(), others, bath.basketsAtOnce()));
    }

    /** The baskets other than {@code basket} that went in and have not left, sorted. */
    List<BinId> others(BinId basket, java.util.Set<BinId> stillInside) {
        return bath.inside().stream().map(LoadTaken::basket)
                .filter(claim -> stillInside.contains(claim) && !claim.equals(basket)).sorted().distinct().toList();
    }

    private BathRefusal locked(BathLock lock) {
        return new BathRefusal.BathLocked(bath.station(), lock.cause(), lock.reason().orElse(""), lock.at(), lock.by());
    }

    private BathRefusal lockedByAnalysis(BathLock lock) {
        return new BathRefusal.BathLockedByAnalysis(bath.station(), lock.at());
    }

    private List<BathRefusal> outOfLimits() {
        return bath.lastAnalysis().map(last -> bath.terms().outOfLimits(last.values()).stream()
                .map(quantity -> outside(quantity, last)).toList()).orElse(List.of());
    }

    private BathRefusal outside(BathQuantity quantity, Analysis analysis) {
        Limits limits = bath.terms().limits().get(quantity);
        BigDecimal value = analysis.values().get(quantity);
        return limits.minimum().filter(low -> value.compareTo(low) < 0)
                .<BathRefusal>map(low -> new BathRefusal.BathBelowLimit(
                        bath.station(), quantity, value, low, quantity.unit(), analysis.sample()))
                .orElseGet(() -> new BathRefusal.BathAboveLimit(bath.station(), quantity, value,
                        limits.maximum().orElseThrow(), quantity.unit(), analysis.sample()));
    }

    private List<BathRefusal> overdue(Analysis good, Moment now) {
        List<BathRefusal> all = new ArrayList<>();
        bath.dueAt().filter(due -> !now.isBefore(due)).ifPresent(due -> all.add(
                new BathRefusal.BathAnalysisOverdue(bath.station(), good.sample(), good.takenAt(), due)));
        bath.loadsLeft().filter(left -> left == 0).ifPresent(none -> all.add(
                new BathRefusal.BathLoadsUsedUp(bath.station(), bath.loadsSinceGood(), good.sample())));
        bath.areaLeftSquareMetres().filter(left -> left.signum() == 0).ifPresent(none -> all.add(
                new BathRefusal.BathAreaUsedUp(
                        bath.station(), bath.areaSinceGoodSquareMetres(), good.sample())));
        return all;
    }
}

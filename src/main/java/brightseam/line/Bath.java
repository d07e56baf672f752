package brightseam.line;

import brightseam.kernel.BinId;
import brightseam.kernel.Moment;
import brightseam.kernel.StationId;
import brightseam.kernel.TravellerId;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The bath of one tank, or the air of one dryer.
 *
 * @param station the tank's label
 * @param liquid what it holds
 * @param volumeLitres how much of it
 * @param basketsAtOnce how many baskets have room
 * @param terms its limits and intervals
 * @param fill the filling that is in now
 * @param lastAnalysis the last analysis of this fill
 * @param lastGood the last analysis of this fill in which everything lay inside its limits
 * @param samples every sample number that was ever used
 * @param loads what went in since the last good sample was taken, older fills too
 * @param inside what the tank was last known to hold, by basket
 * @param locks what stops its use, at most one of each cause
 * @param strengthenedAt when concentrate was last added with no good sample since
 * @param titaniumGramPerLitre dissolved titanium: the last that was measured, and what loads of known area took off
 *     since then
 */
public record Bath(
        StationId station,
        Liquid liquid,
        BigDecimal volumeLitres,
        int basketsAtOnce,
        BathTerms terms,
        Fill fill,
        Optional<Analysis> lastAnalysis,
        Optional<Analysis> lastGood,
        SortedSet<String> samples,
        List<LoadTaken> loads,
        List<LoadTaken> inside,
        List<BathLock> locks,
        Optional<Moment> strengthenedAt,
        BigDecimal titaniumGramPerLitre) {

    /** Copies the collections. */
    public Bath {
        samples = Collections.unmodifiableSortedSet(new TreeSet<>(samples));
        loads = List.copyOf(loads);
        inside = List.copyOf(inside);
        locks = List.copyOf(locks);
    }

    /** The bath after {@code event}; {@code before} is empty for the first one only. */
    public static Bath evolve(Optional<Bath> before, BathEvent event) {
        return BathFold.evolve(before, event);
    }

    /** What stands against taking a load in at {@code now}; whether there is room is another question. */
    public List<BathRefusal> objections(Moment now) {
        return new BathRules(this).objections(now);
    }

    /** Whether it has to be analysed at all. */
    public boolean isAnalysed() {
        return !terms.limits().isEmpty();
    }

    /** When the next analysis is due by time; empty where it is not due by time or was never good. */
    public Optional<Moment> dueAt() {
        return terms.due().after().flatMap(after -> lastGood.map(good -> good.takenAt().plus(after)));
    }

    /** Loads into this fill since the last good sample. */
    public int loadsSinceGood() {
        return (int) ofThisFill().filter(load -> !load.joins()).count();
    }

    /** Known wetted area of those loads, square metres. */
    public BigDecimal areaSinceGoodSquareMetres() {
        return ofThisFill().flatMap(load -> load.areaSquareMetres().stream())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** How many of those loads have no known area, so that the area and the titanium are more than is known. */
    public int loadsOfUnknownArea() {
        return (int) ofThisFill().filter(load -> load.areaSquareMetres().isEmpty()).count();
    }

    /** How many loads may still go in before an analysis is due; empty where loads are not counted. */
    public Optional<Integer> loadsLeft() {
        return terms.due().loads().map(most -> Math.max(0, most - loadsSinceGood()));
    }

    /** How much area may still go in, square metres; empty where area is not counted. */
    public Optional<BigDecimal> areaLeftSquareMetres() {
        return terms.due().areaSquareMetres()
                .map(most -> most.subtract(areaSinceGoodSquareMetres()).max(BigDecimal.ZERO));
    }

    /** Travellers that went in since the last good sample and were not named as suspects yet, sorted. */
    public List<TravellerId> suspects() {
        return loads.stream().filter(load -> !load.named()).flatMap(load -> load.travellers().stream())
                .sorted().distinct().toList();
    }

    /** The lock of {@code cause}, where there is one. */
    public Optional<BathLock> lock(BathLock.Cause cause) {
        return locks.stream().filter(lock -> lock.cause() == cause).findFirst();
    }

    /** Whether {@code basket} is among what the tank was last known to hold. */
    boolean holds(BinId basket) {
        return inside.stream().anyMatch(load -> load.basket().equals(basket));
    }

    private java.util.stream.Stream<LoadTaken> ofThisFill() {
        return loads.stream().filter(load -> load.fill() == fill.number());
    }
}

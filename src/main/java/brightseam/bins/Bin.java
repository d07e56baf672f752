package brightseam.bins;

import brightseam.kernel.BinId;
import brightseam.kernel.TravellerId;
import brightseam.procedure.BinClass;
import java.util.Collection;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * A container with a label, and what is in it.
 *
 * @param id its label
 * @param binClass what sort of container it is
 * @param capacity the most that may be inside at once
 * @param closed whether its lid is on, or the bag sealed
 * @param inside the travellers in it
 * @param fitness whether something may be put in
 * @param retired whether it left the shop for good
 */
public record Bin(
        BinId id,
        BinClass binClass,
        Capacity capacity,
        boolean closed,
        SortedSet<TravellerId> inside,
        Fitness fitness,
        boolean retired) {

    /** Copies the set. */
    public Bin {
        inside = Collections.unmodifiableSortedSet(new TreeSet<>(inside));
    }

    /** The bin after {@code event}; {@code before} is empty for the first one only. */
    public static Bin evolve(Optional<Bin> before, BinEvent event) {
        if (event instanceof BinEvent.Registered first) {
            boolean usable = first.binClass() != BinClass.CLEAN_BIN;
            Fitness fitness = usable ? Fitness.FIT : Fitness.SOILED;
            return new Bin(first.bin(), first.binClass(), Capacity.ofTravellers(first.capacity()), false,
                    new TreeSet<>(), fitness, false);
        }
        return before.orElseThrow(() -> new IllegalArgumentException("not registered: " + event.bin()))
                .after(event);
    }

    /** The same bin with other contents. */
    public Bin withInside(SortedSet<TravellerId> travellers) {
        return with(closed, travellers, fitness);
    }

    /** Whether it holds as many lots as {@link #capacity} allows. */
    public boolean isFull() {
        return capacity.travellers().filter(count -> inside.size() >= count).isPresent();
    }

    private Bin after(BinEvent event) {
        return switch (event) {
            case BinEvent.Registered ignored -> this;
            case BinEvent.PutIn put -> {
                SortedSet<TravellerId> more = new TreeSet<>(inside);
                more.add(put.traveller());
                yield with(closed, more, fitness);
            }
            case BinEvent.TakenOut taken -> {
                SortedSet<TravellerId> fewer = new TreeSet<>(inside);
                fewer.remove(taken.traveller());
                yield with(closed, fewer, fitness);
            }
            case BinEvent.Closed ignored -> with(true, inside, fitness);
            case BinEvent.Opened ignored ->
                with(false, inside, binClass == BinClass.SEALED_BAG ? Fitness.SPENT : fitness);
            case BinEvent.Soiled ignored -> with(closed, inside, soiled());
            case BinEvent.Cleaned ignored -> with(closed, inside, Fitness.FIT);
            case BinEvent.CapacitySet set -> new Bin(id, binClass, set.capacity(), closed, inside, fitness, retired);
            case BinEvent.Retired ignored ->
                new Bin(id, binClass, capacity, closed, inside, fitness, true);
        };
    }

    private Fitness soiled() {
        return switch (binClass) {
            case SHOP_BIN, PROCESS_BASKET -> Fitness.FIT;
            case CLEAN_BIN -> Fitness.SOILED;
            case SEALED_BAG -> Fitness.SPENT;
        };
    }

    private Bin with(boolean closedNow, Collection<TravellerId> insideNow, Fitness fitnessNow) {
        return new Bin(id, binClass, capacity, closedNow, new TreeSet<>(insideNow), fitnessNow, retired);
    }
}

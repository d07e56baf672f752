package brightseam.bins;

import brightseam.kernel.BinId;
import brightseam.kernel.Refusal;
import brightseam.kernel.TravellerId;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/** Whether a traveller still fits into a bin by pieces, area and mass; what is not known is refused, not guessed. */
final class CapacityRules {

    private CapacityRules() {}

    /** What stands against {@code traveller} going into {@code bin}, where lots have {@code sizes}. */
    static List<Refusal> broken(Bin bin, TravellerId traveller, Map<TravellerId, LotSize> sizes) {
        SortedSet<TravellerId> lots = new TreeSet<>(bin.inside());
        lots.add(traveller);
        return Arrays.stream(Measure.values())
                .flatMap(measure -> measure.limit(bin.capacity()).stream()
                        .flatMap(limit -> broken(bin.id(), measure, limit, List.copyOf(lots), sizes).stream()))
                .toList();
    }

    private static Optional<Refusal> broken(
            BinId bin, Measure measure, BigDecimal limit, List<TravellerId> lots, Map<TravellerId, LotSize> sizes) {
        List<TravellerId> unknown = lots.stream().filter(lot -> size(measure, lot, sizes).isEmpty()).toList();
        if (!unknown.isEmpty()) {
            return Optional.of(new BinRefusal.BasketSizeUnknown(bin, measure, unknown, parts(unknown, sizes)));
        }
        BigDecimal total = lots.stream().flatMap(lot -> size(measure, lot, sizes).stream())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        if (total.compareTo(limit) <= 0) {
            return Optional.empty();
        }
        return Optional.of(switch (measure) {
            case PIECES -> new BinRefusal.BasketOverPieces(bin, limit.intValueExact(), total.intValueExact(), lots);
            case AREA -> new BinRefusal.BasketOverArea(bin, limit, total, lots);
            case MASS -> new BinRefusal.BasketOverMass(bin, limit, total, lots);
        });
    }

    private static Optional<BigDecimal> size(Measure measure, TravellerId lot, Map<TravellerId, LotSize> sizes) {
        return Optional.ofNullable(sizes.get(lot)).flatMap(measure::of);
    }

    /** The parts to give a shape; a lot of which nothing is known stands for its own. */
    private static List<String> parts(List<TravellerId> lots, Map<TravellerId, LotSize> sizes) {
        return lots.stream()
                .map(lot -> Optional.ofNullable(sizes.get(lot)).map(LotSize::partNumber).orElse(lot.value()))
                .distinct().toList();
    }
}

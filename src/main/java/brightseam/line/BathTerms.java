package brightseam.line;

import brightseam.kernel.Limits;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a bath has to keep to.
 *
 * @param limits by quantity; an analysis has to measure every one of them
 * @param due when an analysis is due
 * @param removalGramPerSquareMetre metal that a usual soak takes off each square metre, from coupons; for the estimate
 *     of dissolved titanium, empty where it is not known
 */
public record BathTerms(
        SortedMap<BathQuantity, Limits> limits, AnalysisDue due, Optional<BigDecimal> removalGramPerSquareMetre) {

    /** Copies the limits; refuses a limit that the quantity cannot reach and a removal below zero. */
    public BathTerms {
        limits = Collections.unmodifiableSortedMap(new TreeMap<>(limits));
        limits.forEach(BathTerms::check);
        if (removalGramPerSquareMetre.filter(gram -> gram.signum() < 0).isPresent()) {
            throw new IllegalArgumentException("removal: not below zero");
        }
    }

    /**
     * {@code entered} with the parts of nitric to one of hydrofluoric acid, to two decimals; unchanged where one of the
     * acids is missing or there is no hydrofluoric acid.
     */
    public static SortedMap<BathQuantity, BigDecimal> withRatio(Map<BathQuantity, BigDecimal> entered) {
        SortedMap<BathQuantity, BigDecimal> values = new TreeMap<>(entered);
        BigDecimal nitric = entered.get(BathQuantity.NITRIC_ACID);
        BigDecimal hydrofluoric = entered.get(BathQuantity.HYDROFLUORIC_ACID);
        if (nitric != null && hydrofluoric != null && hydrofluoric.signum() > 0) {
            values.put(BathQuantity.ACID_RATIO, nitric.divide(hydrofluoric, 2, RoundingMode.HALF_EVEN));
        }
        return values;
    }

    /** The quantities of {@code values} that lie outside their limits, in the order of the quantities. */
    public List<BathQuantity> outOfLimits(Map<BathQuantity, BigDecimal> values) {
        return limits.entrySet().stream()
                .filter(limit -> values.containsKey(limit.getKey())
                        && !limit.getValue().admits(values.get(limit.getKey())))
                .map(Map.Entry::getKey).toList();
    }

    /** The quantities with limits that {@code values} lacks. */
    public List<BathQuantity> missing(Map<BathQuantity, BigDecimal> values) {
        return limits.keySet().stream().filter(quantity -> !values.containsKey(quantity)).toList();
    }

    private static void check(BathQuantity quantity, Limits limits) {
        boolean possible = limits.minimum().map(quantity::canBe).orElse(true)
                && limits.maximum().map(quantity::canBe).orElse(true);
        if (!possible || limits.equals(Limits.none())) {
            throw new IllegalArgumentException("limits of " + quantity + ": a minimum or a maximum that can be");
        }
    }
}

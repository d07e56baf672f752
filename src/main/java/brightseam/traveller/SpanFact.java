package brightseam.traveller;

import brightseam.kernel.Moment;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * A stretch of a meter's series: an excursion above the limit, or a gap in which nothing is proven.
 *
 * @param from its beginning
 * @param to its end, not before the beginning
 * @param oxygenPpmHighest the highest oxygen in it, as ppm by volume with one decimal; empty for a gap
 */
public record SpanFact(Moment from, Moment to, Optional<BigDecimal> oxygenPpmHighest) {

    /** Refuses an end before the beginning. */
    public SpanFact {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException("a stretch that ends before it begins");
        }
    }
}

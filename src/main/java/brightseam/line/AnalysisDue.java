package brightseam.line;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Optional;

/**
 * When the next analysis is due after a good one: whichever comes first.
 *
 * @param after by time since the good sample was taken
 * @param loads by loads since then
 * @param areaSquareMetres by wetted area since then, square metres
 */
public record AnalysisDue(
        Optional<Duration> after, Optional<Integer> loads, Optional<BigDecimal> areaSquareMetres) {

    /** Refuses an interval of nothing. */
    public AnalysisDue {
        if (after.filter(time -> time.isZero() || time.isNegative()).isPresent()
                || loads.filter(count -> count < 1).isPresent()
                || areaSquareMetres.filter(area -> area.signum() <= 0).isPresent()) {
            throw new IllegalArgumentException("analysis due: intervals above zero");
        }
    }

    /** Never due again. */
    public static AnalysisDue never() {
        return new AnalysisDue(Optional.empty(), Optional.empty(), Optional.empty());
    }
}

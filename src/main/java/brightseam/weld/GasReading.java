package brightseam.weld;

import brightseam.kernel.SupplyId;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * What a meter says of one impurity now.
 *
 * @param meter its label
 * @param ppm parts per million by volume; empty where it was never heard
 * @param ppmMax the limit that the session welds by
 * @param trouble why what it says does not count, in words; empty where it counts
 */
public record GasReading(SupplyId meter, Optional<BigDecimal> ppm, BigDecimal ppmMax, Optional<String> trouble) {

    /** Whether what it says counts. */
    public boolean usable() {
        return ppm.isPresent() && trouble.isEmpty();
    }

    /** Whether it counts and lies at the limit or below. */
    public boolean within() {
        return usable() && ppm.orElseThrow().compareTo(ppmMax) <= 0;
    }
}

package brightseam.session;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Optional;

/**
 * What the gas in the chamber has to be like before and while an arc burns, as it was when the purge began.
 *
 * @param oxygenPpmMax parts per million of oxygen by volume
 * @param moisturePpmMax parts per million of water vapour by volume; empty where no limit is set
 * @param dwell how long the readings must have been inside without a gap
 * @param longestGap the longest time between two readings that still counts as no gap
 */
public record GasLimits(
        BigDecimal oxygenPpmMax, Optional<BigDecimal> moisturePpmMax, Duration dwell, Duration longestGap) {

    /** Refuses limits that are not above zero, a dwell below zero and a gap of nothing. */
    public GasLimits {
        boolean moisture = moisturePpmMax.filter(limit -> limit.signum() <= 0).isPresent();
        if (oxygenPpmMax.signum() <= 0 || moisture) {
            throw new IllegalArgumentException("limits: above zero");
        }
        if (dwell.isNegative() || longestGap.isNegative() || longestGap.isZero()) {
            throw new IllegalArgumentException("dwell and longest gap: not below zero");
        }
    }
}

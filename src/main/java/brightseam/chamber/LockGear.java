package brightseam.chamber;

import brightseam.kernel.StationId;
import java.math.BigDecimal;

/**
 * The transfer lock of a chamber.
 *
 * @param station its own label
 * @param volumeLitres its inside, above zero
 * @param method how it is purged
 * @param oxygenPpmToOpen the most oxygen in it at which its inner door may be opened
 */
public record LockGear(StationId station, BigDecimal volumeLitres, LockMethod method, CitedLimit oxygenPpmToOpen) {

    /** Refuses a lock without volume. */
    public LockGear {
        Amounts.positive("volume of the lock", volumeLitres);
    }
}

package brightseam.session;

import brightseam.kernel.SupplyId;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.Optional;

/**
 * What makes the lock clean enough for its inner door, worked out from its volume and gas when its purge begins.
 *
 * @param method how the air is driven out
 * @param sweep how long argon has to flow; zero by cycles
 * @param cycles how many times it is pumped down and filled; zero by sweeping
 * @param oxygenPpmMax what the lock may hold when the inner door opens, ppm by volume
 * @param meter the lock's own oxygen meter; where there is one it decides, and time and cycles only forecast
 */
public record LockNeed(
        Method method, Duration sweep, int cycles, BigDecimal oxygenPpmMax, Optional<SupplyId> meter) {

    /** How a lock is purged. */
    public enum Method {
        /** Argon flows through it. */
        SWEEP,
        /** It is pumped down and filled with argon, several times. */
        VACUUM_CYCLES
    }

    /** Refuses a need of nothing where no meter decides. */
    public LockNeed {
        boolean nothing = method == Method.SWEEP ? !sweep.isPositive() : cycles < 1;
        if (nothing && meter.isEmpty()) {
            throw new IllegalArgumentException("a lock without a meter needs a time or cycles");
        }
        if (oxygenPpmMax.signum() <= 0) {
            throw new IllegalArgumentException("limit of oxygen: above zero");
        }
    }
}

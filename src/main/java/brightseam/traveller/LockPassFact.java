package brightseam.traveller;

import brightseam.kernel.Moment;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.Syntax;
import brightseam.kernel.TravellerId;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * One pass through the transfer lock, as the travellers in it are told of it.
 *
 * @param session the chamber session
 * @param lock the lock's station
 * @param number which pass of the session, from 1
 * @param inward true into the chamber, false out of it
 * @param begunAt when the first door was shut behind them
 * @param endedAt when the second door was opened
 * @param purge how the lock was purged in between, in words and figures
 * @param oxygenPpmLock oxygen in the lock before the second door opened, ppm by volume, where a meter says
 * @param oxygenPpmChamber the highest oxygen in the chamber after it, ppm by volume, where a meter says
 * @param travellers what was in the lock
 * @param simulated whether any reading came from the simulator
 */
public record LockPassFact(SessionId session, StationId lock, int number, boolean inward, Moment begunAt,
        Moment endedAt, String purge, Optional<BigDecimal> oxygenPpmLock, Optional<BigDecimal> oxygenPpmChamber,
        List<TravellerId> travellers, boolean simulated) {

    private static final int PURGE_LENGTH_MAX = 120;

    /** Refuses a number below 1, missing words and times that run backwards; sorts the travellers. */
    public LockPassFact {
        purge = Syntax.text("purge", purge, PURGE_LENGTH_MAX);
        travellers = travellers.stream().sorted().distinct().toList();
        if (number < 1 || endedAt.isBefore(begunAt)) {
            throw new IllegalArgumentException("a pass has a number from 1, and ends after it began");
        }
    }
}

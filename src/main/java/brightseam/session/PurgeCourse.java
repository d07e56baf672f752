package brightseam.session;

import brightseam.kernel.Moment;
import brightseam.kernel.SupplyId;
import brightseam.purge.Estimate;
import brightseam.purge.LevelCause;
import brightseam.purge.PurgeFit;
import brightseam.purge.PurgeOutlook;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * What the measured curve of a running purge tells.
 *
 * @param meter the oxygen meter
 * @param from where the curve begins: the start of the purge, or the last time the lock's inner door was shut; zero
 *     seconds of the outlook's band
 * @param oxygenPpmLimit what has to be reached
 * @param oxygen what the curve of oxygen says of it
 * @param moisture what the curve of moisture says of its own limit, where a meter measures it in ppm
 * @param cause what keeps the oxygen up where it levels off, as far as the moisture tells
 */
public record PurgeCourse(SupplyId meter, Moment from, BigDecimal oxygenPpmLimit, PurgeOutlook oxygen,
        Optional<PurgeOutlook> moisture, Optional<LevelCause> cause) {

    /** The fit behind an outlook; empty where it is too early for one. */
    public static Optional<PurgeFit> fit(PurgeOutlook outlook) {
        return switch (outlook) {
            case PurgeOutlook.TooEarly ignored -> Optional.empty();
            case PurgeOutlook.OnCourse on -> Optional.of(on.fit());
            case PurgeOutlook.LevelsOff off -> Optional.of(off.fit());
        };
    }

    /** {@code level} less what the supply brings. */
    public static Estimate above(Estimate level, double supplyPpm) {
        return new Estimate(level.value() - supplyPpm, level.low() - supplyPpm, level.high() - supplyPpm);
    }
}

package brightseam.session.shell;

import brightseam.kernel.Moment;
import brightseam.kernel.StationId;
import brightseam.session.GasLimits;
import brightseam.session.MeterFact;
import brightseam.session.Stretch;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.Optional;

/** What a session asks of the meters. Oxygen and moisture in ppm by volume, the room's oxygen in percent. */
public interface GasMeters {

    /** The highest reading of a stretch, and whether readings without a gap prove it. */
    record Highest(BigDecimal oxygenPpm, boolean proven) {}

    /** The oxygen meter of a chamber as it stands now; empty where none is registered. */
    Optional<MeterFact> oxygen(StationId chamber);

    /** The moisture meter of a chamber; a dew point is told in ppm. */
    Optional<MeterFact> moisture(StationId chamber);

    /** The oxygen meter of a lock. */
    Optional<MeterFact> lockOxygen(StationId lock);

    /** The oxygen monitor of the room that a chamber stands in. */
    Optional<MeterFact> room(StationId chamber);

    /** The latest readings of a chamber's oxygen meter, long enough for the dwell of {@code limits}. */
    Optional<Stretch> oxygenLately(StationId chamber, GasLimits limits, Moment now);

    /** The latest readings of a chamber's moisture meter, likewise. */
    Optional<Stretch> moistureLately(StationId chamber, GasLimits limits, Moment now);

    /**
     * The highest oxygen in a chamber from {@code from} to {@code to}; empty where no reading tells.
     *
     * @param longestGap the longest time between readings that proves something
     */
    Optional<Highest> highest(StationId chamber, Moment from, Moment to, Duration longestGap);
}

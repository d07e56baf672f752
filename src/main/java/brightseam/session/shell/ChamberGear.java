package brightseam.session.shell;

import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.ledger.Prepared;
import brightseam.session.ArgonFact;
import brightseam.session.ArgonUse;
import brightseam.session.ChamberSession;
import brightseam.session.GasLimits;
import brightseam.session.LockNeed;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** What a session asks of the register of chambers and of their argon. */
public interface ChamberGear {

    /**
     * What a purge that begins now would take.
     *
     * @param argon what is connected; empty where nothing is
     * @param purge how long the purge takes; empty where it never gets there
     * @param work how long the chamber is held fit afterwards, as usual
     * @param neededStandardLitres what the whole session takes; empty where it never gets there
     * @param objections what stands against beginning it
     */
    record Outlook(Optional<ArgonFact> argon, Optional<Duration> purge, Duration work,
            Optional<BigDecimal> neededStandardLitres, List<Refusal> objections) {
        /** Copies the list. */
        public Outlook {
            objections = List.copyOf(objections);
        }

        /** How long a clean window has to last from now; the work alone where no purge would do. */
        public Duration purgeAndWork() {
            return purge.orElse(Duration.ZERO).plus(work);
        }
    }

    /** Every chamber, sorted by its label. */
    List<StationId> chambers();

    /** The transfer lock of {@code chamber}; empty where the chamber is not registered or has none. */
    Optional<StationId> lockOf(StationId chamber);

    /** What the gas has to keep to; empty where the chamber is not registered. */
    Optional<GasLimits> limits(StationId chamber);

    /** What a purge would take that begins at {@code now}; empty where the chamber is not registered. */
    Optional<Outlook> outlook(StationId chamber, Moment now);

    /** What makes the lock clean enough to open its inner door, worked out by its volume and gas. */
    Optional<LockNeed> lockNeed(StationId chamber, Moment now);

    /**
     * What the chamber would have after the inner door was opened, ppm of oxygen by volume, in the cautious case of
     * full mixing of both rooms.
     */
    Optional<BigDecimal> oxygenPpmAfterOpening(StationId chamber, BigDecimal chamberPpm, BigDecimal lockPpm);

    /** What materials and gas have against taking {@code thing} into {@code chamber}. */
    List<Refusal> objections(StationId chamber, SupplyId thing);

    /** What a session has drawn from its sources until {@code now}; empty where nothing measures it. */
    List<ArgonUse> used(ChamberSession session, Moment now);

    /**
     * What writes down with the chamber, against the forecast, what {@code session} has drawn; stores nothing where no
     * purge was begun.
     */
    Prepared<?> noteUse(ChamberSession session, Origin origin);
}

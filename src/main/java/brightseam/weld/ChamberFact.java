package brightseam.weld;

import brightseam.kernel.KitId;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * The chamber as it is at this moment.
 *
 * @param session the session that runs in it
 * @param kit whose session it is
 * @param chamber which chamber
 * @param notFit everything that the session has against welding now; empty where it is fit
 * @param oxygen what the oxygen meter says; empty where the chamber has none
 * @param moisture what the moisture meter says; empty where the session has no limit for moisture
 * @param argon what it draws on; empty where nothing is connected
 * @param longestGap the longest time between readings that proves something
 * @param simulated whether a meter of it is a simulation
 */
public record ChamberFact(
        SessionId session,
        KitId kit,
        StationId chamber,
        List<Refusal> notFit,
        Optional<GasReading> oxygen,
        Optional<GasReading> moisture,
        Optional<ArgonFact> argon,
        Duration longestGap,
        boolean simulated) {

    /** Copies the list. */
    public ChamberFact {
        notFit = List.copyOf(notFit);
    }
}

package brightseam.weld;

import brightseam.kernel.BadgeId;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.TravellerId;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Under what an arc was begun, as it is written into the record.
 *
 * @param session the chamber session
 * @param chamber the chamber
 * @param welder whose badge
 * @param welderName the printed name
 * @param qualifiedUntil when the welder's qualification ends; empty where the shop asks for none
 * @param filler the label of what was added; empty where nothing was
 * @param backSide what the map asks for the back side and the welder confirmed
 * @param backSideOxygen what a meter there said
 * @param oxygen what the chamber's oxygen meter said
 * @param moisture what its moisture meter said
 * @param argon what the chamber drew on
 * @param travellers the records of the pieces, sorted
 * @param longestGap the longest time between readings that proves something over it
 * @param simulated whether a meter was a simulation
 */
public record ArcSetting(
        SessionId session,
        StationId chamber,
        BadgeId welder,
        String welderName,
        Optional<Instant> qualifiedUntil,
        Optional<String> filler,
        BackSide backSide,
        Optional<GasReading> backSideOxygen,
        GasReading oxygen,
        Optional<GasReading> moisture,
        ArgonFact argon,
        List<TravellerId> travellers,
        Duration longestGap,
        boolean simulated) {

    /** Sorts the travellers, each once. */
    public ArcSetting {
        travellers = travellers.stream().distinct().sorted().toList();
    }
}

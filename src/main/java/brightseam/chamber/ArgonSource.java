package brightseam.chamber;

import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import java.util.Optional;

/**
 * One cylinder, bundle or dewar of argon. Its lot, last day and contamination are the supply's of the same label.
 *
 * @param id its label
 * @param vessel what it comes in
 * @param purity what its certificate says
 * @param last the last reading; empty where it was never read
 * @param connectedTo the chamber that it feeds
 * @param standing whether it can still be used
 */
public record ArgonSource(
        SupplyId id,
        ArgonVessel vessel,
        ArgonPurity purity,
        Optional<ArgonReading> last,
        Optional<StationId> connectedTo,
        Standing standing) {

    /** Whether it can be used. */
    public enum Standing {
        /** It holds argon, or is thought to. */
        IN_USE,
        /** It was written down as empty. */
        EMPTY,
        /** It left the shop for good. */
        RETIRED
    }

    /** The source after {@code event}; {@code before} is empty for the first one only. */
    public static ArgonSource evolve(Optional<ArgonSource> before, ArgonEvent event) {
        return switch (event) {
            case ArgonEvent.Delivered first -> new ArgonSource(first.supply(), first.vessel(), first.purity(),
                    first.reading(), Optional.empty(), Standing.IN_USE);
            case ArgonEvent.Read read -> known(before, event).with(read.reading());
            case ArgonEvent.Connected on -> known(before, event).at(Optional.of(on.station()));
            case ArgonEvent.Disconnected off -> known(before, event).at(Optional.empty());
            case ArgonEvent.Emptied ignored -> known(before, event).as(Standing.EMPTY);
            case ArgonEvent.Retired ignored -> known(before, event).as(Standing.RETIRED);
        };
    }

    /** Whether it holds argon that can be used. */
    public boolean isUsable() {
        return standing == Standing.IN_USE;
    }

    private static ArgonSource known(Optional<ArgonSource> before, ArgonEvent event) {
        return before.orElseThrow(() -> new IllegalArgumentException("not delivered: " + event.supply()));
    }

    /** The same with {@code reading} as its last one, such as the one that a feed tells now. */
    public ArgonSource with(ArgonReading reading) {
        return new ArgonSource(id, vessel, purity, Optional.of(reading), connectedTo, standing);
    }

    private ArgonSource at(Optional<StationId> station) {
        return new ArgonSource(id, vessel, purity, last, station, standing);
    }

    private ArgonSource as(Standing next) {
        return new ArgonSource(id, vessel, purity, last, connectedTo, next);
    }
}

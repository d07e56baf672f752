package brightseam.chamber;

import brightseam.kernel.Origin;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.people.Signer;
import java.util.Optional;

/** What happened to one source of argon. Written forms are kept for ever, as everywhere. */
public sealed interface ArgonEvent {

    /** When, by whom and where. */
    Origin origin();

    /** Which source. */
    SupplyId supply();

    /** It came into the shop; see {@link ArgonSource} for the parts. */
    record Delivered(Origin origin, SupplyId supply, ArgonVessel vessel, ArgonPurity purity,
            Optional<ArgonReading> reading) implements ArgonEvent {}

    /** Its pressure or level was read; {@code corrects} where the one before was wrong. */
    record Read(Origin origin, SupplyId supply, ArgonReading reading, boolean corrects) implements ArgonEvent {}

    /** It was connected to a chamber. */
    record Connected(Origin origin, SupplyId supply, StationId station, Signer signer) implements ArgonEvent {}

    /** It was taken off a chamber. */
    record Disconnected(Origin origin, SupplyId supply, StationId station, Signer signer) implements ArgonEvent {}

    /** Nothing that can be used is left of it. */
    record Emptied(Origin origin, SupplyId supply) implements ArgonEvent {}

    /** It left the shop for good. */
    record Retired(Origin origin, SupplyId supply, String reason) implements ArgonEvent {}
}

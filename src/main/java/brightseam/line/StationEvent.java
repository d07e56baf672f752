package brightseam.line;

import brightseam.kernel.Origin;
import brightseam.kernel.StationId;

/** What happened to one station. Written forms are kept for ever: a changed event gets a new record and type name. */
public sealed interface StationEvent {

    /** When, by whom and where. */
    Origin origin();

    /** Which station. */
    StationId station();

    /** It came into use; see {@link Station} for the parts. */
    record Registered(Origin origin, StationId station, String stationClass, String title, boolean needsQualification)
            implements StationEvent {}

    /** Its use was stopped. */
    record TakenOutOfUse(Origin origin, StationId station, String reason) implements StationEvent {}

    /** Its use was allowed again. */
    record PutBackIntoUse(Origin origin, StationId station) implements StationEvent {}
}

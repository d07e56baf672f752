package brightseam.material;

import brightseam.kernel.HeatId;
import brightseam.kernel.Origin;
import java.time.Instant;

/** What happened to one heat. Written forms are kept for ever: a changed event gets a new record and type name. */
public sealed interface HeatEvent {

    /** When, by whom and where. */
    Origin origin();

    /** Which heat. */
    HeatId heat();

    /** It was received; see {@link Heat} for the parts. */
    record Registered(
            Origin origin,
            HeatId heat,
            String grade,
            String form,
            String dimensions,
            String maker,
            String certificateNumber,
            Instant receivedAt)
            implements HeatEvent {}

    /** Its use was stopped. */
    record HoldPut(Origin origin, HeatId heat, String reason) implements HeatEvent {}

    /** Its use was allowed again. */
    record HoldReleased(Origin origin, HeatId heat, String reason) implements HeatEvent {}
}

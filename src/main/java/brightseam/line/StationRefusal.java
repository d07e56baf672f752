package brightseam.line;

import brightseam.kernel.Refusal;
import brightseam.kernel.StationId;

/** The rules that stand against a {@link StationCommand}. */
public sealed interface StationRefusal extends Refusal {

    /** Which station. */
    StationId station();

    @Override
    default String code() {
        return switch (this) {
            case StationUnknown ignored -> "station-unknown";
            case StationAlreadyRegistered ignored -> "station-already-registered";
            case StationOutOfUse ignored -> "station-out-of-use";
            case StationInUse ignored -> "station-in-use";
        };
    }

    /** No such station was ever registered. */
    record StationUnknown(StationId station) implements StationRefusal {}

    /** The label is in use already, for the station called {@code title}. */
    record StationAlreadyRegistered(StationId station, String title) implements StationRefusal {}

    /** It is out of use, for {@code reason}. */
    record StationOutOfUse(StationId station, String reason) implements StationRefusal {}

    /** It is in use already. */
    record StationInUse(StationId station) implements StationRefusal {}
}

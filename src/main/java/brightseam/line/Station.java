package brightseam.line;

import brightseam.kernel.StationId;
import java.util.Optional;

/**
 * A place where steps are done.
 *
 * @param id its label
 * @param stationClass what procedures call stations of its sort, such as {@code pickle-tank}
 * @param title what people call it
 * @param needsQualification whether only a person qualified for its class may sign at it
 * @param outOfUseReason why nothing may be done at it now; empty where it is in use
 */
public record Station(
        StationId id,
        String stationClass,
        String title,
        boolean needsQualification,
        Optional<String> outOfUseReason) {

    /** The station after {@code event}; {@code before} is empty for the first one only. */
    public static Station evolve(Optional<Station> before, StationEvent event) {
        return switch (event) {
            case StationEvent.Registered first -> new Station(
                    first.station(), first.stationClass(), first.title(), first.needsQualification(), Optional.empty());
            case StationEvent.TakenOutOfUse taken -> known(before, event).with(Optional.of(taken.reason()));
            case StationEvent.PutBackIntoUse ignored -> known(before, event).with(Optional.empty());
        };
    }

    /** Whether nothing may be done at it now. */
    public boolean isOutOfUse() {
        return outOfUseReason.isPresent();
    }

    private static Station known(Optional<Station> before, StationEvent event) {
        return before.orElseThrow(() -> new IllegalArgumentException("not registered: " + event.station()));
    }

    private Station with(Optional<String> reason) {
        return new Station(id, stationClass, title, needsQualification, reason);
    }
}

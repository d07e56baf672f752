package brightseam.line;

import brightseam.kernel.Decision;
import brightseam.kernel.Rules;
import java.util.List;
import java.util.Optional;

/** Decides what a {@link StationCommand} does to a station. */
public final class StationDecider {

    private StationDecider() {}

    /** The events that follow from {@code command}, or every {@link StationRefusal} against it. */
    public static Decision<StationEvent> decide(Optional<Station> station, StationCommand command) {
        return station.map(known -> onKnown(known, command)).orElseGet(() -> onUnknown(command));
    }

    private static Decision<StationEvent> onUnknown(StationCommand command) {
        return command instanceof StationCommand.RegisterStation first
                ? Decision.accepted(List.of(new StationEvent.Registered(
                        first.origin(), first.station(), first.stationClass(), first.title(),
                        first.needsQualification())))
                : Decision.refused(List.of(new StationRefusal.StationUnknown(command.station())));
    }

    private static Decision<StationEvent> onKnown(Station station, StationCommand command) {
        return switch (command) {
            case StationCommand.RegisterStation ignored -> Decision.refused(
                    List.of(new StationRefusal.StationAlreadyRegistered(station.id(), station.title())));
            case StationCommand.TakeOutOfUse take -> Rules.check()
                    .refuseIf(
                            station.isOutOfUse(),
                            () -> new StationRefusal.StationOutOfUse(
                                    station.id(), station.outOfUseReason().orElseThrow()))
                    .accept(new StationEvent.TakenOutOfUse(take.origin(), station.id(), take.reason()));
            case StationCommand.PutBackIntoUse put -> Rules.check()
                    .refuseIf(!station.isOutOfUse(), () -> new StationRefusal.StationInUse(station.id()))
                    .accept(new StationEvent.PutBackIntoUse(put.origin(), station.id()));
        };
    }
}

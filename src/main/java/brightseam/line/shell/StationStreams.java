package brightseam.line.shell;

import brightseam.ledger.shell.EventCodec;
import brightseam.ledger.shell.StreamKind;
import brightseam.line.Station;
import brightseam.line.StationEvent;
import java.util.Map;

/** The streams {@code station/...}: what their events are called. A name is never given to another form. */
final class StationStreams {

    static final Map<String, Class<? extends StationEvent>> TYPES = Map.of(
            "station-registered.1", StationEvent.Registered.class,
            "station-taken-out-of-use.1", StationEvent.TakenOutOfUse.class,
            "station-put-back-into-use.1", StationEvent.PutBackIntoUse.class);

    static final StreamKind<Station, StationEvent> KIND =
            new StreamKind<>("station", new EventCodec<>(TYPES), Station::evolve);

    private StationStreams() {}
}

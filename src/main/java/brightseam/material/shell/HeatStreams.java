package brightseam.material.shell;

import brightseam.ledger.shell.EventCodec;
import brightseam.ledger.shell.StreamKind;
import brightseam.material.Heat;
import brightseam.material.HeatEvent;
import java.util.Map;

/** The streams {@code heat/...}: what their events are called. A name is never given to another form. */
final class HeatStreams {

    static final Map<String, Class<? extends HeatEvent>> TYPES = Map.of(
            "heat-registered.1", HeatEvent.Registered.class,
            "heat-hold-put.1", HeatEvent.HoldPut.class,
            "heat-hold-released.1", HeatEvent.HoldReleased.class);

    static final StreamKind<Heat, HeatEvent> KIND = new StreamKind<>("heat", new EventCodec<>(TYPES), Heat::evolve);

    private HeatStreams() {}
}

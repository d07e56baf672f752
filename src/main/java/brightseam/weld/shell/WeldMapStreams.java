package brightseam.weld.shell;

import brightseam.ledger.shell.EventCodec;
import brightseam.ledger.shell.StreamKind;
import brightseam.weld.WeldMap;
import brightseam.weld.WeldMapEvent;
import java.util.Map;

/** The streams {@code weld-map/...}: what their events are called. A name is never given to another form. */
final class WeldMapStreams {

    static final Map<String, Class<? extends WeldMapEvent>> TYPES = Map.of(
            "weld-map-begun.1", WeldMapEvent.Begun.class,
            "weld-map-redrawn.1", WeldMapEvent.Redrawn.class,
            "weld-map-joint-moved.1", WeldMapEvent.JointMoved.class,
            "weld-map-issued.1", WeldMapEvent.Issued.class);

    static final StreamKind<WeldMap, WeldMapEvent> KIND =
            new StreamKind<>("weld-map", new EventCodec<>(TYPES), WeldMap::evolve);

    private WeldMapStreams() {}
}

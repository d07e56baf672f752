package brightseam.part.shell;

import brightseam.ledger.shell.EventCodec;
import brightseam.ledger.shell.StreamKind;
import brightseam.part.Part;
import brightseam.part.PartEvent;
import java.util.Map;

/** The streams {@code part/...}: what their events are called. A name is never given to another form. */
final class PartStreams {

    static final Map<String, Class<? extends PartEvent>> TYPES = Map.of(
            "part-tube-given.1", PartEvent.TubeGiven.class,
            "part-bar-given.1", PartEvent.BarGiven.class,
            "part-plate-given.1", PartEvent.PlateGiven.class,
            "part-fitting-given.1", PartEvent.FittingGiven.class);

    static final StreamKind<Part, PartEvent> KIND = new StreamKind<>("part", new EventCodec<>(TYPES), Part::evolve);

    private PartStreams() {}
}

package brightseam.chamber.shell;

import brightseam.chamber.Chamber;
import brightseam.chamber.ChamberEvent;
import brightseam.ledger.Entry;
import brightseam.ledger.shell.EventCodec;
import brightseam.ledger.shell.StreamKind;
import java.util.Map;

/** The streams {@code chamber/...}: what their events are called. A name is never given to another form. */
final class ChamberStreams {

    static final Map<String, Class<? extends ChamberEvent>> TYPES = Map.of(
            "chamber-registered.1", ChamberEvent.Registered.class,
            "chamber-terms-changed.1", ChamberEvent.TermsChanged.class,
            "chamber-leak-tested.1", ChamberEvent.LeakTested.class,
            "chamber-argon-changed-over.1", ChamberEvent.ChangedOver.class,
            "chamber-argon-used.1", ChamberEvent.ArgonUsed.class);

    static final StreamKind<Chamber, ChamberEvent> KIND =
            new StreamKind<>("chamber", new EventCodec<>(TYPES), Chamber::evolve);

    private ChamberStreams() {}

    /** Whether {@code entry} is one of these events. */
    static boolean isMine(Entry entry) {
        return entry.stream().family().equals(KIND.family()) && KIND.codec().knows(entry.type());
    }
}

package brightseam.kit.shell;

import brightseam.kit.Kit;
import brightseam.kit.KitEvent;
import brightseam.ledger.shell.EventCodec;
import brightseam.ledger.shell.StreamKind;
import java.util.Map;

/** The streams {@code kit/...}: what their events are called. A name is never given to another form. */
final class KitStreams {

    static final Map<String, Class<? extends KitEvent>> TYPES = Map.of(
            "kit-opened.1", KitEvent.Opened.class,
            "kit-session-due-changed.1", KitEvent.SessionDueChanged.class,
            "kit-lines-added.1", KitEvent.LinesAdded.class,
            "kit-needs-set.1", KitEvent.NeedsSet.class,
            "kit-closed.1", KitEvent.Closed.class);

    static final StreamKind<Kit, KitEvent> KIND = new StreamKind<>("kit", new EventCodec<>(TYPES), Kit::evolve);

    private KitStreams() {}
}

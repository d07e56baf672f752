package brightseam.weld.shell;

import brightseam.ledger.Entry;
import brightseam.ledger.shell.EventCodec;
import brightseam.ledger.shell.StreamKind;
import brightseam.weld.Joint;
import brightseam.weld.JointEvent;
import java.util.Map;

/** The streams {@code joint/...}: what their events are called. A name is never given to another form. */
final class JointStreams {

    static final Map<String, Class<? extends JointEvent>> TYPES = Map.of(
            "joint-begun.1", JointEvent.Begun.class,
            "joint-arc-started.1", JointEvent.ArcStarted.class,
            "joint-arc-stopped.1", JointEvent.ArcStopped.class,
            "joint-evidence-taken.1", JointEvent.EvidenceTaken.class,
            "joint-judged.1", JointEvent.Judged.class);

    static final StreamKind<Joint, JointEvent> KIND =
            new StreamKind<>("joint", new EventCodec<>(TYPES), Joint::evolve);

    private JointStreams() {}

    /** Whether {@code entry} is one of these events. */
    static boolean isMine(Entry entry) {
        return entry.stream().family().equals(KIND.family()) && KIND.codec().knows(entry.type());
    }
}

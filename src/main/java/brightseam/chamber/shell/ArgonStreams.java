package brightseam.chamber.shell;

import brightseam.chamber.ArgonEvent;
import brightseam.chamber.ArgonSource;
import brightseam.ledger.Entry;
import brightseam.ledger.shell.EventCodec;
import brightseam.ledger.shell.StreamKind;
import java.util.Map;

/** The streams {@code argon/...}: what their events are called. A name is never given to another form. */
final class ArgonStreams {

    static final Map<String, Class<? extends ArgonEvent>> TYPES = Map.of(
            "argon-delivered.1", ArgonEvent.Delivered.class,
            "argon-read.1", ArgonEvent.Read.class,
            "argon-connected.1", ArgonEvent.Connected.class,
            "argon-disconnected.1", ArgonEvent.Disconnected.class,
            "argon-emptied.1", ArgonEvent.Emptied.class,
            "argon-retired.1", ArgonEvent.Retired.class);

    static final StreamKind<ArgonSource, ArgonEvent> KIND =
            new StreamKind<>("argon", new EventCodec<>(TYPES), ArgonSource::evolve);

    private ArgonStreams() {}

    /** Whether {@code entry} is one of these events. */
    static boolean isMine(Entry entry) {
        return entry.stream().family().equals(KIND.family()) && KIND.codec().knows(entry.type());
    }
}

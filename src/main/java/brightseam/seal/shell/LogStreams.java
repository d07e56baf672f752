package brightseam.seal.shell;

import brightseam.ledger.shell.EventCodec;
import brightseam.ledger.shell.StreamKind;
import brightseam.seal.KeyHistory;
import brightseam.seal.LogEvent;
import java.util.Map;

/** The streams {@code ledger/KEYS} and {@code ledger/LOSS}: what their events are called. */
final class LogStreams {

    static final String KEYS = "KEYS";
    static final String LOSS = "LOSS";

    static final Map<String, Class<? extends LogEvent>> TYPES = Map.of(
            "log-key-rotated.1", LogEvent.KeyRotated.class,
            "ledger-loss-noted.1", LogEvent.LossNoted.class);

    static final StreamKind<KeyHistory, LogEvent> KIND =
            new StreamKind<>("ledger", new EventCodec<>(TYPES), KeyHistory::evolve);

    private LogStreams() {}
}

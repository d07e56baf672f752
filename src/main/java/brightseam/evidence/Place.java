package brightseam.evidence;

import brightseam.ledger.StreamName;
import java.util.Optional;

/**
 * Where in a file something stands.
 *
 * @param stream whose entry
 * @param version its number there, from 1
 * @param type of the event, as far as it could be read
 * @param step of the traveller, where the event names one
 */
public record Place(StreamName stream, long version, Optional<String> type, Optional<String> step) {

    static Place of(ReadEntry entry) {
        return new Place(entry.entry().stream(), entry.entry().version(), Optional.of(entry.entry().type()),
                entry.content().text("step"));
    }
}

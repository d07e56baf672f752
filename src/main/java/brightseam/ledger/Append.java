package brightseam.ledger;

import java.util.List;

/**
 * Events to be added to the end of one stream.
 *
 * @param stream whose chain grows
 * @param expectedVersion the version that the decision was based on; 0 for a stream that does not exist yet
 * @param events in order; an empty list only asserts the version
 */
public record Append(StreamName stream, long expectedVersion, List<NewEvent> events) {

    /** Copies the list and refuses a negative version. */
    public Append {
        events = List.copyOf(events);
        if (expectedVersion < 0) {
            throw new IllegalArgumentException("expected version below zero");
        }
    }
}

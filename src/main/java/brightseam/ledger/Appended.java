package brightseam.ledger;

import java.util.List;

/** What became of an append: all of it is on disk, or none of it happened. */
public sealed interface Appended {

    /** On disk. The entries in the order of the request. */
    record Stored(List<Entry> entries) implements Appended {}

    /** Somebody else was first: {@code stream} is at {@code found}, not at {@code expected}. Nothing was stored. */
    record Conflict(StreamName stream, long expected, long found) implements Appended {}

    /** The disk or database failed; nothing counts. {@code reason} is for the log and the administrator. */
    record NotStored(String reason) implements Appended {}
}

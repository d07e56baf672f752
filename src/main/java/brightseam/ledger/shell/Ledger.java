package brightseam.ledger.shell;

import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.Entry;
import brightseam.ledger.StreamName;
import java.util.List;
import java.util.function.Consumer;

/** The append-only store of everything that happened. */
public interface Ledger {

    /**
     * Stores {@code appends} together or not at all, and returns only when they would survive a power cut.
     * Projections are updated in the same transaction. Callers of several threads are grouped into one forced write.
     *
     * <p>Callers read what they decide on before, and never append inside a transaction of their own or from a
     * projection: the writer would wait for them.
     *
     * @throws IllegalArgumentException where an event is not one JSON object, is longer than a million characters, or
     *     has a number that canonical form would round
     * @throws IllegalStateException where the calling thread is in a transaction or is the writer itself
     */
    Appended append(List<Append> appends);

    /** The entries of {@code stream} from the first, in order; empty where it does not exist. */
    List<Entry> read(StreamName stream);

    /** The entries of {@code stream} above {@code version}, in order. */
    List<Entry> readAfter(StreamName stream, long version);

    /** At most {@code limit} entries of the whole ledger above {@code position}, in order. */
    List<Entry> readAllAfter(long position, int limit);

    /** The last version of {@code stream}; 0 where it does not exist. */
    long version(StreamName stream);

    /**
     * Something equal to an earlier answer only where nothing was stored between the two in any stream of
     * {@code family}; always another where that cannot be told without asking the database.
     */
    default Object changes(String family) {
        return new Object();
    }

    /**
     * Calls {@code listener} after each stored append, once it is on disk, in order, on a thread of its own, so that a
     * slow listener holds up nobody else. Closing ends that.
     */
    Subscription onStored(Consumer<List<Entry>> listener);
}

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

    /** Calls {@code listener} after each stored append, once it is on disk. Closing ends that. */
    AutoCloseable onStored(Consumer<List<Entry>> listener);
}

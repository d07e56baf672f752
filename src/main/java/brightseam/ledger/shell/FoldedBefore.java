package brightseam.ledger.shell;

import brightseam.ledger.Entry;
import brightseam.ledger.StreamName;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * The state that a stream had before an entry, for projections whose rows depend on more than the entry itself.
 *
 * <p>What was folded last is remembered under the hash of the entry that it ends with. An append that was undone leaves
 * a hash that no later entry names as the one before it, so a wrong state is never taken for the right one.
 *
 * @param <S> the folded state, immutable
 * @param <E> the family's event type
 */
public final class FoldedBefore<S, E> {

    private static final int REMEMBERED_MAX = 4_096;

    private final StreamKind<S, E> kind;
    private final EntryRows rows;
    private final Recent<StreamName, Folded<S>> recent = new Recent<>(REMEMBERED_MAX);

    private record Folded<S>(String hash, S state) {}

    /** Folds streams of {@code kind}; what is not remembered is read from the ledger's own table. */
    public FoldedBefore(StreamKind<S, E> kind, JdbcClient jdbc) {
        this.kind = kind;
        this.rows = new EntryRows(jdbc);
    }

    /** The state before {@code entry}; empty where it is its stream's first. */
    public Optional<S> before(Entry entry) {
        if (entry.version() == 1) {
            return Optional.empty();
        }
        return recent.get(entry.stream()).filter(known -> known.hash().equals(entry.previous())).map(Folded::state)
                .or(() -> read(entry));
    }

    /** Remembers that {@code after} is the state after {@code entry}. */
    public void remember(Entry entry, S after) {
        recent.put(entry.stream(), new Folded<>(entry.hash(), after));
    }

    private Optional<S> read(Entry entry) {
        Optional<S> state = Optional.empty();
        for (Entry earlier : rows.after(entry.stream(), 0)) {
            if (earlier.version() < entry.version()) {
                state = Optional.of(kind.after(state, earlier));
            }
        }
        return state;
    }
}

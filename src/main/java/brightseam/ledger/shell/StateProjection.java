package brightseam.ledger.shell;

import brightseam.ledger.Entry;
import java.util.List;
import java.util.Optional;

/**
 * Rows that are the folded state: the core's own evolve makes them, so no rule is written a second time in SQL.
 *
 * @param <S> the folded state
 * @param <E> the family's event type
 */
public final class StateProjection<S, E> implements Projection {

    private final StreamKind<S, E> kind;
    private final StateRows<S> rows;

    /** Keeps {@code rows} at the fold of the streams of {@code kind}. */
    public StateProjection(StreamKind<S, E> kind, StateRows<S> rows) {
        this.kind = kind;
        this.rows = rows;
    }

    @Override
    public List<String> tables() {
        return rows.tables();
    }

    @Override
    public void apply(Entry entry) {
        boolean mine = entry.stream().family().equals(kind.family());
        if (mine && kind.codec().knows(entry.type())) {
            Optional<S> before = rows.find(entry.stream().identity());
            rows.put(before, kind.after(before, entry), entry.position());
        }
    }
}

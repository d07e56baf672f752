package brightseam.people.shell;

import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.Entry;
import brightseam.ledger.NewEvent;
import brightseam.ledger.StreamName;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Projection;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** A ledger in memory, with projections, without hashes. */
public final class MemoryLedger implements Ledger {

    private final List<Entry> entries = new ArrayList<>();
    private final List<Projection> projections;

    /** A ledger that keeps {@code projections} up to date. */
    public MemoryLedger(Projection... projections) {
        this.projections = List.of(projections);
    }

    @Override
    public synchronized Appended append(List<Append> appends) {
        for (Append append : appends) {
            long found = version(append.stream());
            if (found != append.expectedVersion()) {
                return new Appended.Conflict(append.stream(), append.expectedVersion(), found);
            }
        }
        List<Entry> stored = new ArrayList<>();
        for (Append append : appends) {
            for (NewEvent event : append.events()) {
                Entry entry = new Entry(entries.size() + 1, append.stream(), version(append.stream()) + 1,
                        event.type(), event.json(), "", "");
                entries.add(entry);
                stored.add(entry);
                projections.forEach(projection -> projection.apply(entry));
            }
        }
        return new Appended.Stored(stored);
    }

    @Override
    public synchronized List<Entry> read(StreamName stream) {
        return entries.stream().filter(entry -> entry.stream().equals(stream)).toList();
    }

    @Override
    public List<Entry> readAfter(StreamName stream, long version) {
        return read(stream).stream().filter(entry -> entry.version() > version).toList();
    }

    @Override
    public synchronized List<Entry> readAllAfter(long position, int limit) {
        return entries.stream().filter(entry -> entry.position() > position).limit(limit).toList();
    }

    @Override
    public long version(StreamName stream) {
        return read(stream).size();
    }

    @Override
    public AutoCloseable onStored(Consumer<List<Entry>> listener) {
        throw new UnsupportedOperationException("nobody here listens");
    }
}

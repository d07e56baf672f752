package brightseam.ledger.shell;

import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.Entry;
import brightseam.ledger.NewEvent;
import brightseam.ledger.StreamName;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

/** A ledger that forgets when it is dropped: versions, positions, projections and listeners, but no hashes. */
public final class MemoryLedger implements Ledger {

    private static final String NO_HASH = "0".repeat(64);

    private final List<Projection> projections;
    private final List<Entry> entries = new ArrayList<>();
    private final List<Consumer<List<Entry>>> listeners = new CopyOnWriteArrayList<>();

    public MemoryLedger(Projection... projections) {
        this.projections = List.of(projections);
    }

    @Override
    public Appended append(List<Append> appends) {
        Appended appended = store(appends);
        if (appended instanceof Appended.Stored stored) {
            listeners.forEach(listener -> listener.accept(stored.entries()));
        }
        return appended;
    }

    private synchronized Appended store(List<Append> appends) {
        for (Append append : appends) {
            long found = version(append.stream());
            if (found != append.expectedVersion()) {
                return new Appended.Conflict(append.stream(), append.expectedVersion(), found);
            }
        }
        List<Entry> stored = new ArrayList<>();
        for (Append append : appends) {
            for (NewEvent event : append.events()) {
                Entry entry = new Entry(
                        entries.size() + 1L, append.stream(), version(append.stream()) + 1, event.type(), event.json(),
                        NO_HASH, NO_HASH);
                entries.add(entry);
                stored.add(entry);
                projections.forEach(projection -> projection.apply(entry));
            }
        }
        return new Appended.Stored(stored);
    }

    @Override
    public List<Entry> read(StreamName stream) {
        return readAfter(stream, 0);
    }

    @Override
    public synchronized List<Entry> readAfter(StreamName stream, long version) {
        return entries.stream()
                .filter(entry -> entry.stream().equals(stream) && entry.version() > version)
                .toList();
    }

    @Override
    public synchronized List<Entry> readAllAfter(long position, int limit) {
        return entries.stream().filter(entry -> entry.position() > position).limit(limit).toList();
    }

    @Override
    public synchronized long version(StreamName stream) {
        return entries.stream().filter(entry -> entry.stream().equals(stream)).count();
    }

    @Override
    public AutoCloseable onStored(Consumer<List<Entry>> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }
}

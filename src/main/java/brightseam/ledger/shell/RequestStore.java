package brightseam.ledger.shell;

import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.Chain;
import brightseam.ledger.Entry;
import brightseam.ledger.NewEvent;
import brightseam.ledger.StreamName;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes one request into the open transaction: checks every version first, then entries and projections. */
final class RequestStore {

    private static final int HEADS_MAX = 4_096;

    private final EntryRows rows;
    private final List<Projection> projections;
    private final Map<StreamName, EntryRows.Head> known = new LinkedHashMap<>(64, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<StreamName, EntryRows.Head> eldest) {
            return size() > HEADS_MAX;
        }
    };

    private long last;

    RequestStore(EntryRows rows, List<Projection> projections) {
        this.rows = rows;
        this.projections = List.copyOf(projections);
    }

    /** Forgets where streams end; needed after anything was undone. */
    void forget() {
        known.clear();
    }

    /** Says that the ledger ends at {@code position}: where others wrote meanwhile, what was known may be old. */
    void goOnAfter(long position) {
        if (position != last) {
            forget();
        }
        last = position;
    }

    /** Stores {@code appends} behind {@code position}; writes nothing where a version conflicts. */
    Appended store(List<Append> appends, long position) {
        Map<StreamName, EntryRows.Head> heads = new HashMap<>();
        List<Entry> entries = new ArrayList<>();
        for (Append append : appends) {
            EntryRows.Head head = heads.computeIfAbsent(append.stream(), this::head);
            if (head.version() != append.expectedVersion()) {
                return new Appended.Conflict(append.stream(), append.expectedVersion(), head.version());
            }
            for (NewEvent event : append.events()) {
                Entry entry = Chain.entry(
                        position + entries.size() + 1, append.stream(), head.version() + 1, event, head.hash());
                entries.add(entry);
                head = new EntryRows.Head(entry.version(), entry.hash());
            }
            heads.put(append.stream(), head);
        }
        for (Entry entry : entries) {
            rows.insert(entry);
            projections.forEach(projection -> projection.apply(entry));
        }
        known.putAll(heads);
        last = position + entries.size();
        return new Appended.Stored(List.copyOf(entries));
    }

    private EntryRows.Head head(StreamName stream) {
        EntryRows.Head head = known.get(stream);
        return head == null ? rows.head(stream) : head;
    }
}

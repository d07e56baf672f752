package brightseam.ledger.shell;

import brightseam.ledger.Appended;
import brightseam.ledger.Entry;
import brightseam.ledger.StreamName;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where streams end, as long as this process alone writes the ledger: then nobody has to ask the database whether
 * something came behind a version, nor read a register again that nothing was stored for. Safe for several threads.
 *
 * <p>Nothing is known of what is being written. What was stored is known once it is on disk and before anybody is
 * answered; where that failed or cannot be told, everything is forgotten.
 */
final class KnownEnds {

    private static final int STREAMS_MAX = 16_384;

    private final boolean alone;
    private final Map<StreamName, Long> versions = new LinkedHashMap<>(64, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<StreamName, Long> eldest) {
            return size() > STREAMS_MAX;
        }
    };
    private final Map<String, Long> families = new HashMap<>();
    private long changes;
    private long forgotten;

    /** Knows nothing, ever, where others write too: {@code alone} is false. */
    KnownEnds(boolean alone) {
        this.alone = alone;
    }

    /** Whether nothing is stored of {@code stream} above {@code version}; false where that is not known. */
    synchronized boolean isEnd(StreamName stream, long version) {
        Long known = versions.get(stream);
        return known != null && known == version;
    }

    /** To be taken before a read whose answer is {@link #learned}. */
    synchronized long mark() {
        return changes;
    }

    /** The database answered that {@code stream} ends at {@code version}; passed over where something came since. */
    synchronized void learned(StreamName stream, long version, long mark) {
        if (alone && mark == changes) {
            versions.put(stream, version);
        }
    }

    /** Takes what became of a group. */
    synchronized void answered(List<Appended> outcomes) {
        changes++;
        for (Appended outcome : outcomes) {
            switch (outcome) {
                case Appended.Stored stored -> stored.entries().forEach(this::stored);
                case Appended.Conflict conflict -> { }
                case Appended.NotStored failed -> forget();
            }
        }
    }

    /** Nobody knows what was stored. */
    synchronized void forget() {
        forgotten = ++changes;
        versions.clear();
    }

    /** Equal to an earlier answer only where nothing of {@code family} was stored between the two. */
    synchronized Object changes(String family) {
        return alone ? (Object) Math.max(forgotten, families.getOrDefault(family, 0L)) : new Object();
    }

    private void stored(Entry entry) {
        if (alone) {
            versions.put(entry.stream(), entry.version());
            families.put(entry.stream().family(), changes);
        }
    }
}

package brightseam.ledger;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Re-derives every position, version and hash and trusts none of them.
 *
 * <p>What no chain can show by itself: that entries were cut off at the end. Compare {@link #heads()} with hashes that
 * were kept elsewhere for that.
 */
public final class ChainVerifier {

    private final Map<StreamName, Entry> heads = new HashMap<>();
    private long position;

    /** The first flaw in the entries of the whole ledger, in order from position 1; empty where all fit. */
    public static Optional<Flaw> verifyLedger(List<Entry> entries) {
        ChainVerifier verifier = new ChainVerifier();
        return entries.stream().flatMap(entry -> verifier.next(entry).stream()).findFirst();
    }

    /** The first flaw in the entries of {@code stream}, in order from version 1; empty where all fit. */
    public static Optional<Flaw> verifyStream(StreamName stream, List<Entry> entries) {
        ChainVerifier verifier = new ChainVerifier();
        return entries.stream().flatMap(entry -> verifier.nextOf(stream, entry).stream()).findFirst();
    }

    /**
     * Takes the ledger's next entry, for a ledger too long for one list; positions have no holes. Nothing that follows
     * a flaw is worth checking.
     */
    public Optional<Flaw> next(Entry entry) {
        if (entry.position() != position + 1) {
            return Optional.of(new Flaw.PositionBroken(entry.position(), position + 1));
        }
        return chained(entry);
    }

    /** The last entry seen of each stream. */
    public Map<StreamName, Entry> heads() {
        return Map.copyOf(heads);
    }

    private Optional<Flaw> nextOf(StreamName stream, Entry entry) {
        if (!entry.stream().equals(stream)) {
            return Optional.of(new Flaw.StreamBroken(entry.position(), stream, entry.stream()));
        }
        if (entry.position() <= position) {
            return Optional.of(new Flaw.PositionBroken(entry.position(), position + 1));
        }
        return chained(entry);
    }

    private Optional<Flaw> chained(Entry entry) {
        Entry head = heads.get(entry.stream());
        Optional<Flaw> flaw = head == null
                ? flaw(entry, 1, Chain.GENESIS)
                : flaw(entry, head.version() + 1, head.hash());
        position = entry.position();
        heads.put(entry.stream(), entry);
        return flaw;
    }

    private static Optional<Flaw> flaw(Entry entry, long version, String previous) {
        long at = entry.position();
        StreamName stream = entry.stream();
        if (entry.version() != version) {
            return Optional.of(new Flaw.VersionBroken(at, stream, version, entry.version()));
        }
        if (!NewEvent.isType(entry.type())) {
            return Optional.of(new Flaw.TypeBroken(at, stream, entry.type()));
        }
        if (!entry.previous().equals(previous)) {
            return Optional.of(new Flaw.PreviousBroken(at, stream, version, previous, entry.previous()));
        }
        String hash = Chain.hash(entry);
        return entry.hash().equals(hash)
                ? Optional.empty()
                : Optional.of(new Flaw.HashBroken(at, stream, version, hash, entry.hash()));
    }
}

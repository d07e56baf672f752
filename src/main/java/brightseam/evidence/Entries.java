package brightseam.evidence;

import brightseam.ledger.Chain;
import brightseam.ledger.Entry;
import brightseam.ledger.StreamName;
import brightseam.seal.Checkpoint;
import brightseam.seal.Hash;
import brightseam.seal.MerkleProof;
import brightseam.seal.TreeHash;
import java.util.LinkedHashMap;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The entries of a file, every hash, chain and inclusion path derived anew. */
final class Entries {

    /** Streams that are taken from the first entry and without a hole, or not at all. */
    static final Set<String> WHOLE = Set.of("traveller", "joint", "session", "kit", "heat", "procedure", "stamp");

    private final Checkpoint head;
    private final Map<StreamName, List<ReadEntry>> checked = new LinkedHashMap<>();

    private Entries(Checkpoint head) {
        this.head = head;
    }

    /** All entries by stream, the traveller's own first; or the first misfit. */
    static Checked<Map<StreamName, List<ReadEntry>>> of(Evidence evidence, Checkpoint head) {
        Entries entries = new Entries(head);
        StreamName own = StreamName.of("traveller", evidence.traveller());
        StreamName before = null;
        for (Evidence.Part part : evidence.parts()) {
            boolean first = entries.checked.isEmpty();
            boolean placed = first ? part.stream().equals(own)
                    : !part.stream().equals(own) && (before == null || before.compareTo(part.stream()) < 0);
            if (!placed || part.items().isEmpty()) {
                return new Checked.Wrong<>(new Misfit.StreamOutOfPlace(part.stream()));
            }
            before = first ? null : part.stream();
            Optional<Misfit> misfit = entries.add(part);
            if (misfit.isPresent()) {
                return new Checked.Wrong<>(misfit.get());
            }
        }
        return entries.checked.isEmpty()
                ? new Checked.Wrong<>(new Misfit.StreamOutOfPlace(own))
                : new Checked.Right<>(entries.checked);
    }

    private Optional<Misfit> add(Evidence.Part part) {
        List<ReadEntry> read = new ArrayList<>();
        for (Evidence.Item item : part.items()) {
            Optional<ReadEntry> entry = ReadEntry.of(item.envelope(), item.position());
            if (entry.isEmpty()) {
                return Optional.of(new Misfit.EnvelopeWrong(part.stream(), read.size() + 1L));
            }
            Optional<Entry> before = read.isEmpty() ? Optional.empty() : Optional.of(read.getLast().entry());
            Optional<Misfit> misfit = inChain(part.stream(), entry.get(), before)
                    .or(() -> inHead(entry.get(), item));
            if (misfit.isPresent()) {
                return misfit;
            }
            read.add(entry.get());
        }
        checked.put(part.stream(), List.copyOf(read));
        return Optional.empty();
    }

    private static Optional<Misfit> inChain(StreamName stream, ReadEntry read, Optional<Entry> before) {
        Entry entry = read.entry();
        Place place = Place.of(read);
        long next = before.map(Entry::version).orElse(0L) + 1;
        if (!entry.stream().equals(stream)) {
            return Optional.of(new Misfit.StreamWrong(place, stream));
        }
        if (entry.version() < next || entry.version() > next && WHOLE.contains(stream.family())) {
            return Optional.of(new Misfit.EntryMissing(place, next));
        }
        String previous = before.map(Entry::hash).orElse(Chain.GENESIS);
        if (entry.version() == next && !entry.previous().equals(previous)) {
            return Optional.of(new Misfit.PreviousWrong(place));
        }
        return entry.position() > before.map(Entry::position).orElse(0L)
                ? Optional.empty()
                : Optional.of(new Misfit.PositionWrong(place, entry.position()));
    }

    private Optional<Misfit> inHead(ReadEntry read, Evidence.Item item) {
        Hash leaf = TreeHash.leaf(read.entry());
        boolean included = MerkleProof.rootFromInclusion(item.position() - 1, head.size(), leaf, item.path())
                .filter(head.root()::equals).isPresent();
        return included
                ? Optional.empty()
                : Optional.of(new Misfit.NotInHead(Place.of(read), item.position(), head.size()));
    }
}

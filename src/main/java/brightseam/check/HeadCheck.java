package brightseam.check;

import brightseam.seal.Checkpoint;
import brightseam.seal.Hash;
import brightseam.seal.NoteVerifier;
import brightseam.seal.SignedNote;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * Checks signed heads against the tree that was computed.
 *
 * @param walk through the whole ledger, asked for the roots at the heads' sizes
 * @param keys the public keys that heads may be signed by
 * @param origin the ledger's name, where it is known
 */
public record HeadCheck(LedgerWalk walk, List<NoteVerifier> keys, Optional<String> origin) {

    /** Copies the list. */
    public HeadCheck {
        keys = List.copyOf(keys);
    }

    /** The size that {@code note} states; empty where it is no signed head. */
    public static Optional<Checkpoint> read(String note) {
        return SignedNote.parse(note).map(SignedNote::text).flatMap(Checkpoint::parse);
    }

    /** What does not fit in the head {@code note}, which lies at {@code place}; empty where all fits. */
    public Optional<BrokenLink> check(String place, String note) {
        Optional<Checkpoint> read = read(note);
        if (read.isEmpty()) {
            return Optional.of(new BrokenLink(place, "is no signed head in the form that a head has",
                    "a signed checkpoint", note));
        }
        Checkpoint head = read.get();
        String named = place + " (over " + head.size() + " entries)";
        SignedNote signed = SignedNote.parse(note).orElseThrow();
        if (keys.stream().noneMatch(signed::isSignedBy)) {
            return Optional.of(new BrokenLink(named, "has no signature that fits by a known key", names(keys),
                    String.join(", ", signed.lines().stream().map(SignedNote.Line::name).toList())));
        }
        if (origin.isPresent() && !origin.get().equals(head.origin())) {
            return Optional.of(new BrokenLink(named, "is the head of another ledger", origin.get(), head.origin()));
        }
        return fits(named, head);
    }

    private Optional<BrokenLink> fits(String named, Checkpoint head) {
        if (head.size() > walk.size()) {
            return Optional.of(new BrokenLink(named, "was signed over more entries than there are: the end is gone",
                    head.size() + " entries", walk.size() + " entries"));
        }
        Hash root = walk.root(head.size()).orElseThrow();
        return root.equals(head.root()) ? Optional.empty() : Optional.of(new BrokenLink(named,
                "was signed over other entries than those that are there", head.root().hex(), root.hex()));
    }

    private static String names(Collection<NoteVerifier> keys) {
        return keys.isEmpty() ? "a key, and none was found"
                : String.join(", ", keys.stream().map(NoteVerifier::text).toList());
    }
}

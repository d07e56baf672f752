package brightseam.evidence;

import brightseam.seal.Checkpoint;
import brightseam.seal.Hash;
import brightseam.seal.MerkleProof;
import brightseam.seal.NoteVerifier;
import brightseam.seal.SignedNote;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The heads of a file, their signatures and consistency checked.
 *
 * @param checkpoint the head that every entry is proven against
 * @param signers who signed it, of the keys that bear the ledger's name
 * @param times every head that bounds times, growing, the checkpoint last
 * @param earlier how many earlier heads there are, whether they bound times or not
 */
record Heads(Checkpoint checkpoint, Set<NoteVerifier> signers, List<At> times, int earlier) {

    private static final String NAME = "the checkpoint";

    /** The ledger had {@code size} entries at {@code time}, as the key's holder says. */
    record At(long size, Instant time) {}

    private record Signed(Checkpoint head, Set<NoteVerifier> signers) {

        /** Those that bear the ledger's name: a trusted key of one shop does not vouch for the ledger of another. */
        Set<NoteVerifier> own() {
            return signers.stream().filter(key -> key.name().equals(head.origin())).collect(Collectors.toSet());
        }
    }

    static Checked<Heads> of(Evidence evidence, Keys keys) {
        return signed(NAME, evidence.checkpoint(), keys).then(last -> {
            if (!keys.count(last.own())) {
                return new Checked.Wrong<>(new Misfit.NotSignedByGiven(String.join(", ",
                        last.signers().stream().map(NoteVerifier::text).toList())));
            }
            return earlier(evidence.heads(), last, keys);
        });
    }

    private static Checked<Heads> earlier(List<Evidence.Head> heads, Signed last, Keys keys) {
        List<At> times = new ArrayList<>();
        long before = 0;
        for (int i = 0; i < heads.size(); i++) {
            String name = "earlier head " + (i + 1);
            long smallest = before;
            List<Hash> path = heads.get(i).consistency();
            Checked<Signed> checked = signed(name, heads.get(i).note(), keys)
                    .then(one -> fits(name, one, last, smallest, path));
            switch (checked) {
                case Checked.Wrong<Signed> wrong -> {
                    return new Checked.Wrong<>(wrong.misfit());
                }
                case Checked.Right<Signed> right -> {
                    before = right.value().head().size();
                    at(right.value(), keys).ifPresent(times::add);
                }
            }
        }
        at(last, keys).ifPresent(times::add);
        return new Checked.Right<>(new Heads(last.head(), last.own(), List.copyOf(times), heads.size()));
    }

    private static Checked<Signed> fits(
            String name, Signed one, Signed last, long before, List<Hash> path) {
        Checkpoint head = one.head();
        if (!head.origin().equals(last.head().origin())) {
            return new Checked.Wrong<>(new Misfit.OtherLedger(name, head.origin(), last.head().origin()));
        }
        if (head.size() <= before || head.size() >= last.head().size()) {
            return new Checked.Wrong<>(new Misfit.HeadOutOfOrder(name, head.size()));
        }
        return MerkleProof.isConsistent(head.size(), head.root(), last.head().size(), last.head().root(), path)
                ? new Checked.Right<>(one)
                : new Checked.Wrong<>(new Misfit.HeadInconsistent(name, head.size()));
    }

    private static Checked<Signed> signed(String name, String whole, Keys keys) {
        Optional<SignedNote> note = SignedNote.parse(whole);
        Optional<Checkpoint> head = note.flatMap(read -> Checkpoint.parse(read.text()));
        if (head.isEmpty() || head.get().size() == 0) {
            return new Checked.Wrong<>(new Misfit.HeadUnreadable(name));
        }
        return keys.signers(name, note.get()).then(signers ->
                new Checked.Right<>(new Signed(head.get(), signers)));
    }

    private static Optional<At> at(Signed signed, Keys keys) {
        return signed.head().time().filter(time -> keys.count(signed.own()))
                .map(time -> new At(signed.head().size(), time));
    }

    /** When the entry at {@code position} was in the ledger at the latest; empty where no head says a time. */
    Optional<Instant> inBy(long position) {
        return times.stream().filter(head -> head.size() >= position).findFirst().map(At::time);
    }

    /** When the entry at {@code position} was not yet in the ledger; empty where no head says so. */
    Optional<Instant> notYetAt(long position) {
        return times.reversed().stream().filter(head -> head.size() < position).findFirst().map(At::time);
    }
}

package brightseam.seal.shell;

import brightseam.ledger.shell.Ledger;
import brightseam.seal.Checkpoint;
import brightseam.seal.GrowingTree;
import brightseam.seal.Hash;
import brightseam.seal.NoteVerifier;
import brightseam.seal.ProofMaker;
import brightseam.seal.SignedNote;
import brightseam.seal.TreeHash;
import brightseam.seal.shell.Seals.KeyInUse;
import brightseam.seal.shell.Seals.Sealed;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Holds the ledger that is there against the last head, before anything is served. Reads a few hundred rows. */
final class StartCheck {

    private final Ledger ledger;
    private final SealRows rows;
    private final TileRows tiles;
    private final Keys keys;
    private final HeadsFile file;

    /** What a start found: the last head, and what does not fit. */
    record Found(Optional<Sealed> head, Optional<Unfit> unfit) {}

    StartCheck(Ledger ledger, SealRows rows, TileRows tiles, Keys keys, HeadsFile file) {
        this.ledger = ledger;
        this.rows = rows;
        this.tiles = tiles;
        this.keys = keys;
        this.file = file;
    }

    /**
     * Looks, where {@code stored} entries are there at {@code now}; changes nothing.
     *
     * @param isLead whether this node seals: another one may have no file yet
     */
    Found look(long stored, Instant now, boolean isLead) {
        Optional<Sealed> inRows = rows.latest();
        Optional<String> note = file.last();
        Optional<Sealed> inFile = note.flatMap(StartCheck::head);
        if (note.isEmpty() && inRows.isEmpty()) {
            return new Found(Optional.empty(), Optional.empty());
        }
        Sealed head = inFile.filter(one -> inRows.isEmpty() || one.size() >= inRows.get().size())
                .or(() -> inRows).orElseGet(() -> new Sealed(0, TreeHash.EMPTY, "", now));
        return new Found(Optional.of(head), unfit(head, note, inFile, stored, now)
                .filter(found -> isLead || !(found instanceof Unfit.FileMissing)));
    }

    private Optional<Unfit> unfit(Sealed head, Optional<String> note, Optional<Sealed> inFile, long stored,
            Instant now) {
        if (!keys.isReady()) {
            return Optional.of(new Unfit.KeyMissing(keys.folder().path().toAbsolutePath()));
        }
        if (note.isEmpty() && !file.exists()) {
            return Optional.of(new Unfit.FileMissing(file.path().toAbsolutePath()));
        }
        boolean fileIsOurs = note.isEmpty() || inFile.filter(one -> isOurs(one, now)).isPresent();
        if (!fileIsOurs || !isOurs(head, now)) {
            return Optional.of(new Unfit.NotOurs(file.path().toAbsolutePath()));
        }
        if (stored < head.size()) {
            return Optional.of(new Unfit.Shorter(stored, lastAt(stored)));
        }
        List<Sealed> claims = new ArrayList<>(List.of(head));
        inFile.filter(one -> one.size() != head.size()).ifPresent(claims::add);
        rows.latest().filter(one -> one.size() != head.size()).ifPresent(claims::add);
        return claims.stream().allMatch(this::fits) ? Optional.empty() : Optional.of(new Unfit.Other());
    }

    /** What {@code note} says as a head; empty where it is none of ours in form. */
    static Optional<Sealed> head(String note) {
        return SignedNote.parse(note).flatMap(signed -> Checkpoint.parse(signed.text()))
                .map(checkpoint -> new Sealed(checkpoint.size(), checkpoint.root(), note,
                        checkpoint.time().orElse(Instant.EPOCH)));
    }

    private boolean isOurs(Sealed head, Instant now) {
        Optional<SignedNote> note = SignedNote.parse(head.note());
        List<NoteVerifier> all = keys.all(now).stream().map(KeyInUse::key).toList();
        return note.filter(signed -> all.stream().anyMatch(signed::isSignedBy)).isPresent();
    }

    private boolean fits(Sealed head) {
        try {
            return root(head.size()).equals(head.root());
        } catch (LedgerAltered shorterOrOther) {
            return false;
        }
    }

    /** From full tiles, and from the entries behind them. */
    private Hash root(long size) {
        GrowingTree tree = new StoredTree(tiles, ledger).edge();
        if (tree.size() >= size) {
            return new ProofMaker(new StoredTree(tiles, ledger)).root(size);
        }
        Growth.grow(tree, ledger, size, new ArrayList<>());
        return tree.root();
    }

    private Optional<Instant> lastAt(long stored) {
        return ledger.readAllAfter(Math.max(0, stored - 1), 1).stream().findFirst().flatMap(StatedTime::of);
    }
}

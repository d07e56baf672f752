package brightseam.seal.shell;

import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.Entry;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.OnDisk;
import brightseam.seal.Checkpoint;
import brightseam.seal.GrowingTree;
import brightseam.seal.Hash;
import brightseam.seal.SignedNote;
import brightseam.seal.Tile;
import brightseam.seal.shell.Seals.Sealed;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.springframework.transaction.support.TransactionTemplate;

/** Signs the tree over what is on disk, one head at a time. */
final class Sealing {

    private static final int ENTRIES_AT_ONCE = 1_000;
    /** How long a position that was stored just now may take until it is known to be on disk. */
    private static final long WAIT_MILLIS = 5_000;
    private static final long LOOK_MILLIS = 5;

    private final Ledger ledger;
    private final OnDisk onDisk;
    private final ShopClock clock;
    private final TransactionTemplate transaction;
    private final SealRows rows;
    private final TileRows tiles;
    private final Keys keys;
    private final HeadsFile file;
    private GrowingTree tree;
    private volatile Optional<Sealed> latest;

    Sealing(Ledger ledger, OnDisk onDisk, ShopClock clock, TransactionTemplate transaction, SealRows rows,
            TileRows tiles, Keys keys, HeadsFile file) {
        this.ledger = ledger;
        this.onDisk = onDisk;
        this.clock = clock;
        this.transaction = transaction;
        this.rows = rows;
        this.tiles = tiles;
        this.keys = keys;
        this.file = file;
        this.tree = new StoredTree(tiles, ledger).edge();
        this.latest = rows.latest();
    }

    Optional<Sealed> latest() {
        return latest;
    }

    Sealed covering(long position) {
        Optional<Sealed> head = covers(position);
        for (long waited = 0; head.isEmpty() && waited < WAIT_MILLIS; waited += LOOK_MILLIS) {
            if (onDisk.position() >= position) {
                seal();
            } else {
                pause();
            }
            head = covers(position);
        }
        return head.orElseThrow(() -> new IllegalArgumentException("nothing is stored at position " + position));
    }

    /** Seals what is on disk; does nothing where the last head covers it. */
    synchronized void seal() {
        long target = onDisk.position();
        if (target == latest.map(Sealed::size).orElse(0L)) {
            return;
        }
        GrowingTree grown = tree.copy();
        List<Tile> full = new ArrayList<>();
        grow(grown, target, full);
        Sealed head = sign(grown);
        file.append(head.note());
        transaction.executeWithoutResult(status -> {
            tiles.insert(full);
            rows.insert(head);
        });
        tree = grown;
        latest = Optional.of(head);
    }

    private void grow(GrowingTree grown, long target, List<Tile> full) {
        while (grown.size() < target) {
            long from = grown.size();
            int count = (int) Math.min(ENTRIES_AT_ONCE, target - from);
            List<Entry> entries = ledger.readAllAfter(from, count);
            List<Hash> leaves = StoredTree.leaves(entries, from);
            if (leaves.size() < count) {
                throw new LedgerAltered("the entry at position " + (from + leaves.size() + 1) + " is gone");
            }
            leaves.forEach(leaf -> grown.add(leaf, full));
        }
    }

    private Sealed sign(GrowingTree grown) {
        Instant now = clock.now().wall().truncatedTo(ChronoUnit.MILLIS);
        Hash root = grown.root();
        Checkpoint checkpoint = new Checkpoint(keys.name(), grown.size(), root, List.of("time " + now));
        String note = SignedNote.sign(checkpoint.text(), keys.signers(now)).whole();
        return new Sealed(grown.size(), root, note, now);
    }

    private Optional<Sealed> covers(long position) {
        return latest.filter(head -> head.size() >= position);
    }

    private static void pause() {
        try {
            TimeUnit.MILLISECONDS.sleep(LOOK_MILLIS);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while a head was awaited", interrupted);
        }
    }
}

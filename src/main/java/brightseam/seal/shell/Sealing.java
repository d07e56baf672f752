package brightseam.seal.shell;

import brightseam.kernel.Origin;
import brightseam.kernel.shell.ShopClock;
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
import java.util.function.BooleanSupplier;
import org.springframework.transaction.support.TransactionTemplate;

/** Signs the tree over what is on disk, one head at a time. */
final class Sealing {

    /** How long a position that was stored just now may take until it is known to be on disk. */
    private static final long WAIT_MILLIS = 5_000;
    private static final long END_WAIT_MILLIS = 1_000;
    private static final long LOOK_MILLIS = 5;

    private final Ledger ledger;
    private final OnDisk onDisk;
    private final ShopClock clock;
    private final TransactionTemplate transaction;
    private final SealRows rows;
    private final TileRows tiles;
    private final Keys keys;
    private final HeadsFile file;
    private final StartCheck check;
    private final BooleanSupplier leads;
    private GrowingTree tree = new GrowingTree();
    private boolean hasLed;
    private volatile Optional<Sealed> latest = Optional.empty();
    private volatile Optional<String> trouble = Optional.empty();

    Sealing(Ledger ledger, OnDisk onDisk, ShopClock clock, TransactionTemplate transaction, SealRows rows,
            TileRows tiles, Keys keys, HeadsFile file, BooleanSupplier leads) {
        this.ledger = ledger;
        this.onDisk = onDisk;
        this.clock = clock;
        this.transaction = transaction;
        this.rows = rows;
        this.tiles = tiles;
        this.keys = keys;
        this.file = file;
        this.check = new StartCheck(ledger, rows, tiles, keys, file);
        this.leads = leads;
    }

    /**
     * Goes on from the last head, where the ledger fits it, or from what {@code accepted} leaves.
     *
     * @throws SealsUnusable where it does not fit and nobody accepted that for this head
     */
    synchronized void begin(Optional<Loss.Accepted> accepted) {
        StartCheck.Found found = check.look(onDisk.stored(), clock.now().wall(), leads.getAsBoolean());
        if (found.unfit().isPresent()) {
            Sealed head = found.head().orElseThrow();
            Loss.Accepted loss = accepted.filter(one -> one.size() == head.size())
                    .orElseThrow(() -> new SealsUnusable(found.unfit().get().words(head)));
            new Loss(ledger, transaction, rows, tiles, keys, file).note(head, found.unfit().get(), loss,
                    onDisk.stored(), new Origin(clock.now(), Origin.SHOP, "server", clock.isDemo()));
            goOn(rows.latest());
        } else if (leads.getAsBoolean()) {
            goOn(found.head());
        }
    }

    Optional<Sealed> latest() {
        return leads.getAsBoolean() ? latest : rows.latest();
    }

    /** Why nothing is sealed any more; empty while all is well. */
    Optional<String> trouble() {
        return trouble;
    }

    Sealed covering(long position) {
        Optional<Sealed> head = covers(position);
        for (long waited = 0; head.isEmpty() && waited < WAIT_MILLIS; waited += LOOK_MILLIS) {
            if (leads.getAsBoolean() && onDisk.position() >= position) {
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
        Instant now = clock.now().wall().truncatedTo(ChronoUnit.MILLIS);
        long target = onDisk.position();
        if (!leads.getAsBoolean() || target == latest.map(Sealed::size).orElse(0L)) {
            return;
        }
        if (trouble.isPresent()) {
            throw new LedgerAltered(trouble.get());
        }
        try {
            extend(target, now);
        } catch (LedgerAltered altered) {
            trouble = Optional.of(altered.getMessage());
            throw altered;
        }
    }

    /** As {@link #seal}, once what was stored just now is on disk, for a while at most. */
    void sealAtEnd() {
        for (long waited = 0; onDisk.position() < onDisk.stored() && waited < END_WAIT_MILLIS; waited += LOOK_MILLIS) {
            pause();
        }
        seal();
    }

    /** {@code now} was read before {@code target}: what is stored later never says an earlier time by right. */
    private void extend(long target, Instant now) {
        if (!hasLed || !file.last().equals(latest.map(Sealed::note))) {
            takeUp();
        }
        GrowingTree grown = tree.copy();
        refuseChanged(grown);
        List<Tile> full = new ArrayList<>();
        Growth.grow(grown, ledger, target, full);
        Sealed head = sign(grown, now);
        file.append(head.note());
        store(full, head);
        tree = grown;
        latest = Optional.of(head);
    }

    /** Another node sealed meanwhile, or somebody changed the file. */
    private void takeUp() {
        StartCheck.Found found = check.look(onDisk.stored(), clock.now().wall(), hasLed);
        if (found.unfit().isPresent()) {
            throw new LedgerAltered(found.unfit().get().words(found.head().orElseThrow()));
        }
        goOn(found.head());
    }

    /** Brings file, rows and tiles to {@code head}, whichever of them a stop left behind. */
    private void goOn(Optional<Sealed> head) {
        GrowingTree grown = new StoredTree(tiles, ledger).edge();
        List<Tile> full = new ArrayList<>();
        Growth.grow(grown, ledger, Math.max(grown.size(), head.map(Sealed::size).orElse(0L)), full);
        boolean rowIsMissing = head.isPresent() && rows.at(head.get().size()).isEmpty();
        if (!full.isEmpty() || rowIsMissing) {
            transaction.executeWithoutResult(status -> {
                tiles.insert(full);
                head.filter(one -> rowIsMissing).ifPresent(rows::insert);
            });
        }
        head.filter(one -> !file.last().equals(Optional.of(one.note()))).ifPresent(one -> file.append(one.note()));
        tree = grown;
        latest = head;
        hasLed = true;
    }

    /** The entries right of the last full tile must still be those that were sealed. */
    private void refuseChanged(GrowingTree grown) {
        List<Hash> sealed = grown.openLeaves();
        long from = grown.size() - sealed.size();
        if (!StoredTree.leaves(ledger.readAllAfter(from, sealed.size()), from).equals(sealed)) {
            throw new LedgerAltered("an entry between the positions " + (from + 1) + " and " + grown.size()
                    + " is not the one that was sealed");
        }
    }

    private void store(List<Tile> full, Sealed head) {
        transaction.executeWithoutResult(status -> {
            tiles.insert(full);
            rows.insert(head);
        });
    }

    private Sealed sign(GrowingTree grown, Instant now) {
        Hash root = grown.root();
        Checkpoint checkpoint = new Checkpoint(keys.folder().name(), grown.size(), root,
                List.of(Checkpoint.timeLine(now)));
        String note = SignedNote.sign(checkpoint.text(), keys.signers(clock.now().wall())).whole();
        return new Sealed(grown.size(), root, note, now);
    }

    private Optional<Sealed> covers(long position) {
        return latest().filter(head -> head.size() >= position);
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

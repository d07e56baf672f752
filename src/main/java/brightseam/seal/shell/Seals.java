package brightseam.seal.shell;

import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.Entry;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.OnDisk;
import brightseam.seal.Hash;
import brightseam.seal.MerkleProof;
import brightseam.seal.NoteVerifier;
import brightseam.seal.ProofMaker;
import brightseam.seal.TreeHash;
import jakarta.annotation.PreDestroy;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** Signed heads of the tree over the whole ledger, proofs against them, and the keys that signed them. */
@Service
public class Seals implements AutoCloseable {

    private final Ledger ledger;
    private final ShopClock clock;
    private final SealRows rows;
    private final TileRows tiles;
    private final Keys keys;
    private final Sealing sealing;
    private final Sealer sealer;

    /**
     * A signed head.
     *
     * @param size how many entries it covers: those at the positions 1 to {@code size}
     * @param root of the tree over them
     * @param note the whole signed note (C2SP signed-note) around the checkpoint (C2SP tlog-checkpoint)
     * @param at when it was signed, by the shop's clock
     */
    public record Sealed(long size, Hash root, String note, Instant at) {}

    /**
     * A key and when it signs.
     *
     * @param key its public half
     * @param from when it was made
     * @param until when it signs no more; empty for the newest
     * @param active whether it signs now
     */
    public record KeyInUse(NoteVerifier key, Instant from, Optional<Instant> until, boolean active) {}

    Seals(Ledger ledger, OnDisk onDisk, ShopClock clock, JdbcTemplate jdbc, PlatformTransactionManager transactions,
            @Value("${brightseam.data:./data}") Path data, @Value("${brightseam.keys:}") String keyFolder,
            @Value("${brightseam.ledger-name:}") String name,
            @Value("${brightseam.seal-millis:1000}") long sealMillis) {
        this.ledger = ledger;
        this.clock = clock;
        this.rows = new SealRows(JdbcClient.create(jdbc));
        this.tiles = new TileRows(jdbc);
        KeyFolder folder = new KeyFolder(keyFolder.isBlank() ? data.resolve("keys") : Path.of(keyFolder));
        if (folder.isEmpty()) {
            folder.begin(name, clock.now().wall());
        }
        this.keys = new Keys(folder);
        this.sealing = new Sealing(ledger, onDisk, clock, new TransactionTemplate(transactions), rows, tiles, keys,
                new HeadsFile(data.resolve("heads.txt")));
        this.sealer = new Sealer(ledger, sealing::seal, sealMillis);
    }

    /** The last head; empty where the ledger was never sealed. */
    public Optional<Sealed> latest() {
        return sealing.latest();
    }

    /**
     * The last head where it covers {@code position}, else a new one that does.
     *
     * @throws IllegalArgumentException where the ledger has no such position on disk
     * @throws LedgerAltered where the ledger does not extend what was sealed
     */
    public Sealed covering(long position) {
        return sealing.covering(position);
    }

    /**
     * The path from the entry at {@code position} to the root of {@code head}: RFC 9162, section 2.1.3.
     *
     * @throws IllegalArgumentException where the head does not cover it
     * @throws LedgerAltered where the entry is not the one that was sealed
     */
    public List<Hash> inclusion(long position, Sealed head) {
        List<Hash> path = new ProofMaker(new StoredTree(tiles, ledger)).inclusion(position - 1, head.size());
        Entry entry = ledger.readAllAfter(position - 1, 1).stream().filter(found -> found.position() == position)
                .findFirst().orElseThrow(() -> new LedgerAltered("the entry at position " + position + " is gone"));
        if (!MerkleProof.rootFromInclusion(position - 1, head.size(), TreeHash.leaf(entry), path)
                .equals(Optional.of(head.root()))) {
            throw new LedgerAltered("the entry at position " + position + " is not the one that was sealed");
        }
        return path;
    }

    /**
     * The path that proves that {@code newer} extends {@code older}: RFC 9162, section 2.1.4.
     *
     * @throws IllegalArgumentException unless {@code older} has entries and no more than {@code newer}
     * @throws LedgerAltered where one does not extend the other
     */
    public List<Hash> consistency(Sealed older, Sealed newer) {
        List<Hash> path = new ProofMaker(new StoredTree(tiles, ledger)).consistency(older.size(), newer.size());
        if (!MerkleProof.isConsistent(older.size(), older.root(), newer.size(), newer.root(), path)) {
            throw new LedgerAltered("the ledger of " + newer.size() + " entries does not extend the sealed one of "
                    + older.size());
        }
        return path;
    }

    /** Every key that ever signed, the oldest first. */
    public List<KeyInUse> keys() {
        return keys.all(clock.now().wall());
    }

    /** The head over exactly {@code size} entries. */
    public Optional<Sealed> at(long size) {
        return rows.at(size);
    }

    /** At most {@code limit} heads over more than {@code size} entries, the smallest first. */
    public List<Sealed> after(long size, int limit) {
        return rows.after(size, limit);
    }

    /** The name of the log, which stands in every head. */
    public String name() {
        return keys.name();
    }

    /** Seals what is left, then seals no more. */
    @Override
    @PreDestroy
    public void close() {
        sealer.close();
    }
}

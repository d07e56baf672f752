package brightseam.seal.shell;

import brightseam.kernel.Origin;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.Entry;
import brightseam.ledger.Outcome;
import brightseam.ledger.shell.Lead;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.OnDisk;
import brightseam.seal.BackDating;
import brightseam.seal.Hash;
import brightseam.seal.KeyHistory;
import brightseam.seal.MerkleProof;
import brightseam.seal.NoteVerifier;
import brightseam.seal.ProofMaker;
import brightseam.seal.TreeHash;
import jakarta.annotation.PreDestroy;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
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
    private final SealSettings settings;
    private final SealRows rows;
    private final TileRows tiles;
    private final Keys keys;
    private final Sealing sealing;
    private final Sealer sealer;
    private final Witnesses witnesses;

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

    /**
     * How a witness stands.
     *
     * @param place its folder or address
     * @param last the last head that it took since the start
     * @param failure why it did not take the newest; empty where it did or was not asked yet
     */
    public record WitnessState(String place, Optional<Sealed> last, Optional<String> failure) {}

    /**
     * Between which two heads an entry came in.
     *
     * @param after the last head without it; empty where the first head holds it
     * @param before the first head that holds it; empty where it is not sealed yet
     */
    public record SealedWithin(Optional<Sealed> after, Optional<Sealed> before) {}

    /**
     * An entry that says it happened before a head that does not hold it, by more than {@link BackDating#TOLERANCE}.
     *
     * @param entry which it is
     * @param stated the time that it states
     * @param sealedWithout the last head without it
     * @param before by how much
     */
    public record BackDated(Entry entry, Instant stated, Sealed sealedWithout, Duration before) {}

    /**
     * Checks what is there against what was sealed, and goes on.
     *
     * @throws SealsUnusable where the two do not fit
     */
    Seals(Ledger ledger, OnDisk onDisk, ShopClock clock, JdbcTemplate jdbc, PlatformTransactionManager transactions,
            Lead lead, SealSettings settings) {
        this.ledger = ledger;
        this.clock = clock;
        this.settings = settings;
        this.rows = new SealRows(JdbcClient.create(jdbc));
        this.tiles = new TileRows(jdbc);
        HeadsFile file = new HeadsFile(settings.headsFile());
        KeyFolder folder = new KeyFolder(settings.keyFolder());
        this.keys = new Keys(folder, ledger);
        if (folder.isEmpty() && file.last().isEmpty() && rows.latest().isEmpty()) {
            folder.begin(settings.name(), clock.now().wall());
        }
        this.sealing = new Sealing(ledger, onDisk, clock, new TransactionTemplate(transactions), rows, tiles, keys,
                file, lead::isLead);
        sealing.begin(Loss.parse(settings.lossNoted()));
        this.sealer = new Sealer(ledger, sealing::seal, sealing::sealAtEnd, settings.sealMillis());
        this.witnesses = new Witnesses(
                settings.witnesses(), settings.witnessSeconds(),
                () -> lead.isLead() ? sealing.latest() : Optional.empty(), this::isExtended);
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

    /** At most {@code limit} of the last heads, the newest first. */
    public List<Sealed> last(int limit) {
        return rows.last(limit);
    }

    /** Between which two heads the entry at {@code position} came in. */
    public SealedWithin sealedWithin(long position) {
        return new SealedWithin(rows.lastBelow(position), rows.firstFrom(position));
    }

    /** Entries behind {@code position}, at most {@code limit} looked at, that say they happened long before. */
    public List<BackDated> backDated(long position, int limit) {
        List<Entry> entries = ledger.readAllAfter(position, limit);
        if (entries.isEmpty()) {
            return List.of();
        }
        TreeMap<Long, Sealed> heads = new TreeMap<>();
        rows.lastBelow(position + 1).ifPresent(head -> heads.put(head.size(), head));
        rows.after(position, entries.size()).forEach(head -> heads.put(head.size(), head));
        List<BackDated> found = new ArrayList<>();
        for (Entry entry : entries) {
            Optional.ofNullable(heads.lowerEntry(entry.position())).map(Map.Entry::getValue)
                    .flatMap(head -> backDated(entry, head)).ifPresent(found::add);
        }
        return found;
    }

    /** How the witnesses stand, in the order of the setting. */
    public List<WitnessState> witnesses() {
        return witnesses.states();
    }

    /** Sends the newest head to every witness now, and waits some seconds for their answers. */
    public void sendToWitnesses() {
        witnesses.sendNow();
    }

    /** Why nothing is sealed any more, as part of a sentence; empty while all is well. */
    public Optional<String> trouble() {
        return sealing.trouble();
    }

    /**
     * Lets a new key take over. Both sign for {@code brightseam.key-overlap-days}, and the entry that says so is
     * covered by heads that the old key signed: who pinned that can follow.
     *
     * @param isLost the old key is lost, or somebody else may have it: it signs no more, from now on
     * @return refused while an earlier overlap runs, unless a key is lost
     * @throws IllegalArgumentException for a missing reason
     * @throws brightseam.ledger.NotStoredException where the disk failed
     */
    public Outcome<KeyHistory> rotate(boolean isLost, String reason, Origin origin) {
        return keys.rotate(settings.overlap(), isLost, reason, origin);
    }

    /** The name of the log, which stands in every head. */
    public String name() {
        return keys.folder().name();
    }

    /** Seals what is left, sends it to the witnesses, then seals no more. */
    @Override
    @PreDestroy
    public void close() {
        sealer.close();
        witnesses.close();
    }

    private boolean isExtended(String note) {
        Optional<Sealed> older = StartCheck.head(note);
        Optional<Sealed> newer = latest();
        if (older.isEmpty() || newer.isEmpty() || older.get().size() > newer.get().size()) {
            return false;
        }
        consistency(older.get(), newer.get());
        return true;
    }

    private static Optional<BackDated> backDated(Entry entry, Sealed head) {
        return StatedTime.of(entry).flatMap(stated -> BackDating.before(head.at(), stated)
                .map(before -> new BackDated(entry, stated, head, before)));
    }
}

package brightseam.check;

import brightseam.ledger.Chain;
import brightseam.seal.GrowingTree;
import brightseam.seal.Hash;
import brightseam.seal.Tile;
import brightseam.seal.TreeHash;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Goes through the whole ledger once, from position 1: chains every stream, grows the tree, and keeps the roots at the
 * sizes that somebody signed. Nothing that comes after a broken link is worth checking. Not safe for several threads.
 */
public final class LedgerWalk {

    private final GrowingTree tree = new GrowingTree();
    private final Map<String, End> ends = new HashMap<>();
    private final long[] sizes;
    private final Hash[] roots;
    private int reached;

    private record End(long version, String hash) {}

    /** Keeps the roots at {@code sizes}, in any order. */
    public LedgerWalk(long... sizes) {
        this.sizes = Arrays.stream(sizes).filter(size -> size >= 0).sorted().distinct().toArray();
        this.roots = new Hash[this.sizes.length];
        keepRoot();
    }

    /** Takes the next row; adds to {@code full} the tiles of the tree that it fills. */
    public Optional<BrokenLink> next(StoredRow row, List<Tile> full) {
        Optional<BrokenLink> broken = misplaced(row).or(() -> unchained(row));
        if (broken.isPresent()) {
            return broken;
        }
        byte[] envelope = row.envelope().getBytes(StandardCharsets.UTF_8);
        String hash = Hash.sha256(envelope).hex();
        if (!hash.equals(row.hash())) {
            return Optional.of(new BrokenLink(row.place(),
                    "was changed after it was stored: its hash does not follow from its content, type, stream, version"
                            + " and previous hash", hash, row.hash()));
        }
        ends.put(row.stream(), new End(row.version(), hash));
        tree.add(TreeHash.leaf(envelope), full);
        keepRoot();
        return Optional.empty();
    }

    /** How many entries fitted. */
    public long size() {
        return tree.size();
    }

    /** How many streams they belong to. */
    public int streams() {
        return ends.size();
    }

    /** The root over all of them. */
    public Hash root() {
        return tree.root();
    }

    /** The root over the first {@code size} entries, where that was asked for and reached. */
    public Optional<Hash> root(long size) {
        int at = Arrays.binarySearch(sizes, size);
        return at < 0 ? Optional.empty() : Optional.ofNullable(roots[at]);
    }

    private Optional<BrokenLink> misplaced(StoredRow row) {
        long due = tree.size() + 1;
        return row.position() == due ? Optional.empty() : Optional.of(new BrokenLink("entry " + due,
                row.position() > due ? "is missing: the positions have a hole" : "comes twice",
                "position " + due, row.place()));
    }

    private Optional<BrokenLink> unchained(StoredRow row) {
        End end = ends.getOrDefault(row.stream(), new End(0, Chain.GENESIS));
        List<BrokenLink> broken = new ArrayList<>();
        if (!row.hasForm()) {
            broken.add(new BrokenLink(row.place(), "has a stream or a type that no entry is ever stored with",
                    "family/IDENTITY and a type name", row.stream() + " and " + row.type()));
        } else if (row.version() != end.version() + 1) {
            broken.add(new BrokenLink(row.place(), "does not follow its stream's entry before it",
                    "version " + (end.version() + 1), "version " + row.version()));
        } else if (!row.previous().equals(end.hash())) {
            broken.add(new BrokenLink(row.place(), "does not name the hash of its stream's entry before it",
                    end.hash(), row.previous()));
        }
        return broken.stream().findFirst();
    }

    private void keepRoot() {
        if (reached < sizes.length && sizes[reached] == tree.size()) {
            roots[reached++] = tree.root();
        }
    }
}

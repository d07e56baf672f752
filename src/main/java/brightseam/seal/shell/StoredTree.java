package brightseam.seal.shell;

import brightseam.ledger.Entry;
import brightseam.ledger.shell.Ledger;
import brightseam.seal.GrowingTree;
import brightseam.seal.Hash;
import brightseam.seal.Subtrees;
import brightseam.seal.Tile;
import brightseam.seal.TreeHash;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The tree as it is stored: full tiles, and behind the last of them the entries themselves. A subtree costs one row,
 * or 255 short ones at the edge. What was read is remembered while one proof is made. Not safe for several threads.
 */
final class StoredTree implements Subtrees {

    private final TileRows tiles;
    private final Ledger ledger;
    private final Map<Place, List<Hash>> read = new HashMap<>();

    private record Place(int level, long index) {}

    StoredTree(TileRows tiles, Ledger ledger) {
        this.tiles = tiles;
        this.ledger = ledger;
    }

    @Override
    public Hash hash(int level, long index) {
        int width = 1 << (level % Tile.BITS);
        long first = index * width;
        List<Hash> hashes = read.computeIfAbsent(new Place(level / Tile.BITS, first / Tile.WIDTH), this::read);
        int from = (int) (first % Tile.WIDTH);
        if (hashes.size() < from + width) {
            throw new LedgerAltered("the ledger or its tree is shorter than what was sealed: level " + level
                    + ", subtree " + index + " is not there");
        }
        return Tile.root(hashes.subList(from, from + width));
    }

    /** The right edge of the full tiles' leaves, to grow on from. */
    GrowingTree edge() {
        long size = tiles.leaves();
        List<List<Hash>> open = new ArrayList<>();
        open.add(List.of());
        for (int level = 1; size >>> (level * Tile.BITS) > 0; level++) {
            int count = GrowingTree.openAt(size, level);
            long from = (size >>> (level * Tile.BITS)) - count;
            open.add(tiles.roots(level - 1, from, count));
        }
        return new GrowingTree(size, open);
    }

    private List<Hash> read(Place place) {
        return tiles.hashes(place.level(), place.index()).orElseGet(() -> place.level() == 0
                ? leaves(ledger.readAllAfter(place.index() * Tile.WIDTH, Tile.WIDTH), place.index() * Tile.WIDTH)
                : tiles.roots(place.level() - 1, place.index() * Tile.WIDTH, Tile.WIDTH));
    }

    /**
     * The leaves of {@code entries}, which come behind position {@code position}.
     *
     * @throws LedgerAltered where one is missing among them
     */
    static List<Hash> leaves(List<Entry> entries, long position) {
        List<Hash> leaves = new ArrayList<>(entries.size());
        for (Entry entry : entries) {
            if (entry.position() != position + leaves.size() + 1) {
                throw new LedgerAltered("the entry at position " + (position + leaves.size() + 1) + " is gone");
            }
            leaves.add(TreeHash.leaf(entry));
        }
        return leaves;
    }
}

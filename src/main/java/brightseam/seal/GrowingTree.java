package brightseam.seal;

import java.util.ArrayList;
import java.util.List;

/**
 * The right edge of the tree as tiles that are not full yet: it grows leaf by leaf, hands out every tile that becomes
 * full, and knows its root. A million leaves need at most 765 hashes in memory. Not safe for several threads.
 */
public final class GrowingTree {

    private final List<List<Hash>> open;
    private long size;

    /** A tree without leaves. */
    public GrowingTree() {
        this(0, List.of());
    }

    /**
     * Goes on from {@code size} leaves.
     *
     * @param open for each level from 0 the hashes that stand right of the last full tile, in order
     * @throws IllegalArgumentException where a level has another number of them than the size says
     */
    public GrowingTree(long size, List<List<Hash>> open) {
        this.size = size;
        this.open = new ArrayList<>();
        for (int level = 0; level < open.size() || size >>> (level * Tile.BITS) > 0; level++) {
            List<Hash> hashes = level < open.size() ? open.get(level) : List.of();
            if (hashes.size() != openAt(size, level)) {
                throw new IllegalArgumentException(
                        "level " + level + " of " + size + " leaves is not made of " + hashes.size() + " hashes");
            }
            this.open.add(new ArrayList<>(hashes));
        }
    }

    /** How many hashes of {@code level} stand right of the last full tile in a tree of {@code size} leaves. */
    public static int openAt(long size, int level) {
        int shift = level * Tile.BITS;
        return shift >= Long.SIZE ? 0 : (int) ((size >>> shift) % Tile.WIDTH);
    }

    /** The same tree, which grows by itself. */
    public GrowingTree copy() {
        return new GrowingTree(size, open);
    }

    /** Adds the next leaf by its hash, and adds to {@code full} the tiles that this fills, the lowest first. */
    public void add(Hash leaf, List<Tile> full) {
        Hash grown = leaf;
        for (int level = 0; grown != null; level++) {
            if (level == open.size()) {
                open.add(new ArrayList<>());
            }
            List<Hash> hashes = open.get(level);
            hashes.add(grown);
            grown = null;
            if (hashes.size() == Tile.WIDTH) {
                Tile tile = new Tile(level, size >>> ((level + 1) * Tile.BITS), hashes);
                full.add(tile);
                hashes.clear();
                grown = tile.root();
            }
        }
        size++;
    }

    /** How many leaves there are. */
    public long size() {
        return size;
    }

    /** The leaves that stand right of the last full tile, in order. */
    public List<Hash> openLeaves() {
        return open.isEmpty() ? List.of() : List.copyOf(open.getFirst());
    }

    /** The root over all leaves: RFC 9162, section 2.1.1. */
    public Hash root() {
        return new ProofMaker(this::edge).root(size);
    }

    /** The full subtrees that the root is made of all stand right of the last full tile of their level. */
    private Hash edge(int level, long index) {
        List<Hash> hashes = open.get(level / Tile.BITS);
        int width = 1 << (level % Tile.BITS);
        int from = (int) ((index * width) % Tile.WIDTH);
        return Tile.root(hashes.subList(from, from + width));
    }
}

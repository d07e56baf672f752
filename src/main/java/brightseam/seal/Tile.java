package brightseam.seal;

import java.util.List;

/**
 * 256 neighbouring hashes of the tree, at level 0 of leaves, at level n of full subtrees of 256<sup>n</sup> leaves.
 *
 * @param level of the tile
 * @param index its place on its level, from 0
 * @param hashes exactly {@value #WIDTH}
 */
public record Tile(int level, long index, List<Hash> hashes) {

    /** How many hashes a tile has: the width that C2SP tlog-tiles uses. */
    public static final int WIDTH = 256;
    /** The binary logarithm of {@link #WIDTH}: how many levels of the tree one level of tiles spans. */
    public static final int BITS = 8;

    /** Copies the list; refuses any other number of hashes. */
    public Tile {
        hashes = List.copyOf(hashes);
        if (hashes.size() != WIDTH) {
            throw new IllegalArgumentException("a tile has " + WIDTH + " hashes, not " + hashes.size());
        }
    }

    /** The root over all its hashes. */
    public Hash root() {
        return root(hashes);
    }

    /** The root over {@code hashes}, as many as a power of two: RFC 9162, section 2.1.1. */
    public static Hash root(List<Hash> hashes) {
        if (hashes.size() == 1) {
            return hashes.getFirst();
        }
        int half = hashes.size() / 2;
        return TreeHash.node(root(hashes.subList(0, half)), root(hashes.subList(half, hashes.size())));
    }
}

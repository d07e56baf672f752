package brightseam.seal;

import java.util.ArrayList;
import java.util.List;

/** Makes roots and proofs of RFC 9162 from full subtrees. */
public final class ProofMaker {

    private final Subtrees subtrees;

    /** Asks {@code subtrees}, only for subtrees that are full in the tree of the size in question. */
    public ProofMaker(Subtrees subtrees) {
        this.subtrees = subtrees;
    }

    /** The root over the first {@code size} leaves. */
    public Hash root(long size) {
        return size == 0 ? TreeHash.EMPTY : range(0, size);
    }

    /**
     * The inclusion path of leaf {@code index}, from 0, in the tree of {@code size} leaves: RFC 9162, section 2.1.3.1.
     *
     * @throws IllegalArgumentException where the tree has no such leaf
     */
    public List<Hash> inclusion(long index, long size) {
        if (index < 0 || index >= size) {
            throw new IllegalArgumentException("no leaf " + index + " in a tree of " + size);
        }
        List<Hash> path = new ArrayList<>();
        include(index, 0, size, path);
        return path;
    }

    /**
     * The consistency path from the tree of {@code oldSize} leaves to that of {@code newSize}: RFC 9162, section
     * 2.1.4.1; empty where they are the same tree.
     *
     * @throws IllegalArgumentException unless {@code 0 < oldSize <= newSize}
     */
    public List<Hash> consistency(long oldSize, long newSize) {
        if (oldSize < 1 || oldSize > newSize) {
            throw new IllegalArgumentException("a tree of " + oldSize + " does not come before one of " + newSize);
        }
        List<Hash> path = new ArrayList<>();
        agree(oldSize, 0, newSize, true, path);
        return path;
    }

    private void include(long index, long from, long size, List<Hash> path) {
        if (size == 1) {
            return;
        }
        long left = leftOf(size);
        if (index < left) {
            include(index, from, left, path);
            path.add(range(from + left, size - left));
        } else {
            include(index - left, from + left, size - left, path);
            path.add(range(from, left));
        }
    }

    private void agree(long oldSize, long from, long size, boolean known, List<Hash> path) {
        if (oldSize == size) {
            if (!known) {
                path.add(range(from, size));
            }
            return;
        }
        long left = leftOf(size);
        if (oldSize <= left) {
            agree(oldSize, from, left, known, path);
            path.add(range(from + left, size - left));
        } else {
            agree(oldSize - left, from + left, size - left, false, path);
            path.add(range(from, left));
        }
    }

    private Hash range(long from, long size) {
        if (Long.bitCount(size) == 1) {
            return subtrees.hash(Long.numberOfTrailingZeros(size), from / size);
        }
        long left = leftOf(size);
        return TreeHash.node(range(from, left), range(from + left, size - left));
    }

    /** The largest power of two below {@code size}, for a size above 1. */
    private static long leftOf(long size) {
        return Long.highestOneBit(size - 1);
    }
}

package brightseam.seal;

import java.util.ArrayList;
import java.util.List;

/**
 * The right edge of a growing tree: the roots of the full subtrees that its size is made of, the largest first. A
 * million leaves need twenty hashes. Not safe for several threads.
 */
public final class Frontier {

    private final List<Hash> roots;
    private long size;

    /** A tree without leaves. */
    public Frontier() {
        this(0, List.of());
    }

    /**
     * Goes on from {@code size} leaves, whose full subtrees have {@code roots}, the largest first.
     *
     * @throws IllegalArgumentException where there are not as many as the size has binary ones
     */
    public Frontier(long size, List<Hash> roots) {
        if (size < 0 || Long.bitCount(size) != roots.size()) {
            throw new IllegalArgumentException(size + " leaves are not made of " + roots.size() + " full subtrees");
        }
        this.size = size;
        this.roots = new ArrayList<>(roots);
    }

    /** Adds the next leaf by its hash. */
    public void add(Hash leaf) {
        Hash grown = leaf;
        for (long digits = size; (digits & 1) == 1; digits >>= 1) {
            grown = TreeHash.node(roots.removeLast(), grown);
        }
        roots.add(grown);
        size++;
    }

    /** How many leaves there are. */
    public long size() {
        return size;
    }

    /** The root over all leaves: RFC 9162, section 2.1.1. */
    public Hash root() {
        if (roots.isEmpty()) {
            return TreeHash.EMPTY;
        }
        Hash root = roots.getLast();
        for (Hash left : roots.reversed().subList(1, roots.size())) {
            root = TreeHash.node(left, root);
        }
        return root;
    }

    /** The roots of the full subtrees, the largest first. */
    public List<Hash> roots() {
        return List.copyOf(roots);
    }
}

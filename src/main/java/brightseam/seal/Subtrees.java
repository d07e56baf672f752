package brightseam.seal;

/** Knows the roots of full subtrees. */
@FunctionalInterface
public interface Subtrees {

    /** The root over the 2^{@code level} leaves from leaf {@code index}·2^{@code level}; level 0 is a leaf's hash. */
    Hash hash(int level, long index);
}

package brightseam.seal;

import java.util.List;
import java.util.Optional;

/** Checks proofs as RFC 9162 says, step by step; trusts nothing in them. */
public final class MerkleProof {

    private MerkleProof() {}

    /**
     * The root that follows from a leaf and its inclusion path: RFC 9162, section 2.1.3.2. Compare it with that of a
     * signed head.
     *
     * @param index of the leaf, from 0
     * @param size of the tree
     * @return empty where no tree of that size has such a path
     */
    public static Optional<Hash> rootFromInclusion(long index, long size, Hash leaf, List<Hash> path) {
        if (index < 0 || index >= size) {
            return Optional.empty();
        }
        long fn = index;
        long sn = size - 1;
        Hash root = leaf;
        for (Hash step : path) {
            if (sn == 0) {
                return Optional.empty();
            }
            if ((fn & 1) == 1 || fn == sn) {
                root = TreeHash.node(step, root);
                int zeros = fn == 0 ? 0 : Long.numberOfTrailingZeros(fn);
                fn >>= zeros;
                sn >>= zeros;
            } else {
                root = TreeHash.node(root, step);
            }
            fn >>= 1;
            sn >>= 1;
        }
        return sn == 0 ? Optional.of(root) : Optional.empty();
    }

    /**
     * Whether the newer tree holds all leaves of the older one, in their places: RFC 9162, section 2.1.4.2. Of two
     * sizes that are the same, the roots have to be the same and the path empty.
     */
    public static boolean isConsistent(long oldSize, Hash oldRoot, long newSize, Hash newRoot, List<Hash> path) {
        if (oldSize < 1 || oldSize > newSize) {
            return false;
        }
        if (oldSize == newSize) {
            return path.isEmpty() && oldRoot.equals(newRoot);
        }
        boolean rootIsStep = Long.bitCount(oldSize) == 1;
        if (!rootIsStep && path.isEmpty()) {
            return false;
        }
        Hash first = rootIsStep ? oldRoot : path.getFirst();
        return isConsistent(oldSize, oldRoot, newSize, newRoot, first,
                rootIsStep ? path : path.subList(1, path.size()));
    }

    private static boolean isConsistent(
            long oldSize, Hash oldRoot, long newSize, Hash newRoot, Hash first, List<Hash> rest) {
        int ones = Long.numberOfTrailingZeros(oldSize);
        long fn = (oldSize - 1) >> ones;
        long sn = (newSize - 1) >> ones;
        Hash older = first;
        Hash newer = first;
        for (Hash step : rest) {
            if (sn == 0) {
                return false;
            }
            if ((fn & 1) == 1 || fn == sn) {
                older = TreeHash.node(step, older);
                newer = TreeHash.node(step, newer);
                int zeros = fn == 0 ? 0 : Long.numberOfTrailingZeros(fn);
                fn >>= zeros;
                sn >>= zeros;
            } else {
                newer = TreeHash.node(newer, step);
            }
            fn >>= 1;
            sn >>= 1;
        }
        return sn == 0 && older.equals(oldRoot) && newer.equals(newRoot);
    }
}

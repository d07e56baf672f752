package brightseam.seal;

import brightseam.ledger.Chain;
import brightseam.ledger.Entry;
import java.nio.charset.StandardCharsets;

/** How the tree is hashed: RFC 9162, section 2.1.1, SHA-256. Leaf number i, from 0, is the entry at position i+1. */
public final class TreeHash {

    /** The root of a tree without leaves. */
    public static final Hash EMPTY = Hash.sha256();

    private static final byte[] LEAF = {0};
    private static final byte[] NODE = {1};

    private TreeHash() {}

    /** The hash of the leaf that holds {@code data}. */
    public static Hash leaf(byte[] data) {
        return Hash.sha256(LEAF, data);
    }

    /** The hash of the leaf of {@code entry}: over its canonical envelope, see {@link Chain#envelope}. */
    public static Hash leaf(Entry entry) {
        return leaf(Chain.envelope(entry.stream(), entry.version(), entry.type(), entry.json(), entry.previous())
                .getBytes(StandardCharsets.UTF_8));
    }

    /** The hash over two subtrees. */
    public static Hash node(Hash left, Hash right) {
        return Hash.sha256(NODE, left.bytes(), right.bytes());
    }
}

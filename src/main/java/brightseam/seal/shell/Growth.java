package brightseam.seal.shell;

import brightseam.ledger.Entry;
import brightseam.ledger.shell.Ledger;
import brightseam.seal.GrowingTree;
import brightseam.seal.Hash;
import brightseam.seal.Tile;
import java.util.List;

/** Lets a tree grow by the ledger's entries, some at a time. */
final class Growth {

    private static final int ENTRIES_AT_ONCE = 1_000;

    private Growth() {}

    /**
     * Adds the entries behind {@code tree} until it has {@code size}, and to {@code full} the tiles that this fills.
     *
     * @throws LedgerAltered where one of them is not there
     */
    static void grow(GrowingTree tree, Ledger ledger, long size, List<Tile> full) {
        while (tree.size() < size) {
            long from = tree.size();
            int count = (int) Math.min(ENTRIES_AT_ONCE, size - from);
            List<Entry> entries = ledger.readAllAfter(from, count);
            List<Hash> leaves = StoredTree.leaves(entries, from);
            if (leaves.size() < count) {
                throw new LedgerAltered("the entry at position " + (from + leaves.size() + 1) + " is gone");
            }
            leaves.forEach(leaf -> tree.add(leaf, full));
        }
    }
}

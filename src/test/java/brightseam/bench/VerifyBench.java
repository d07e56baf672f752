package brightseam.bench;

import brightseam.ledger.Chain;
import brightseam.ledger.ChainVerifier;
import brightseam.ledger.Entry;
import brightseam.ledger.NewEvent;
import brightseam.ledger.StreamName;
import brightseam.seal.Frontier;
import brightseam.seal.TreeHash;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How many entries a second are verified in memory by one thread: every chain, then the tree over all of them. Entries
 * of the usual size. Argument: how many (200,000).
 */
public final class VerifyBench {

    private static final int ENTRIES = 200_000;
    private static final int STREAMS = 5_000;
    private static final int TURNS = 4;
    /** The average over the demo shop's travellers is 271 characters. */
    private static final String CONTENT = "{\"text\":\"" + "x".repeat(260) + "\"}";

    private VerifyBench() {}

    /** Runs and prints. */
    public static void main(String[] args) {
        List<String> given = Arguments.of(args);
        List<Entry> entries = entries(given.isEmpty() ? ENTRIES : Integer.parseInt(given.getFirst()));
        System.out.println("entries | chains/s | tree/s");
        for (int turn = 0; turn < TURNS; turn++) {
            double chains = seconds(() -> {
                if (ChainVerifier.verifyLedger(entries).isPresent()) {
                    throw new IllegalStateException("a flaw");
                }
            });
            double tree = seconds(() -> tree(entries));
            System.out.printf("%,d | %,.0f | %,.0f%n", entries.size(), entries.size() / chains, entries.size() / tree);
        }
    }

    private static double seconds(Runnable work) {
        long start = System.nanoTime();
        work.run();
        return (System.nanoTime() - start) / 1e9;
    }

    private static void tree(List<Entry> entries) {
        Frontier frontier = new Frontier();
        for (Entry entry : entries) {
            frontier.add(TreeHash.leaf(entry));
        }
        if (frontier.size() != entries.size()) {
            throw new IllegalStateException("a leaf is missing");
        }
    }

    private static List<Entry> entries(int count) {
        List<Entry> entries = new ArrayList<>(count);
        Map<StreamName, Entry> heads = new HashMap<>();
        for (int i = 0; i < count; i++) {
            StreamName stream = StreamName.of("traveller", "T-" + i % STREAMS);
            Entry head = heads.get(stream);
            Entry entry = Chain.entry(i + 1, stream, head == null ? 1 : head.version() + 1,
                    new NewEvent("signed.1", CONTENT), head == null ? Chain.GENESIS : head.hash());
            heads.put(stream, entry);
            entries.add(entry);
        }
        return entries;
    }
}

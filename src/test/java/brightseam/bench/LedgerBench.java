package brightseam.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.LongAdder;
import java.util.stream.Stream;

/**
 * Durable appends per second with 1, 8 and 64 callers, beside bare H2 in the same run with the same durability: see
 * {@link BareCommits}, once with a commit for each row and once with rows that wait grouped into one commit. The three
 * take turns of one second, so that what else the machine does hits all alike. Prints a table; argument: turns for each
 * (default 4), after one that does not count.
 */
public final class LedgerBench {

    private static final int GROUP_MAX = 256;
    private static final long TURN_NANOS = 1_000_000_000L;

    private LedgerBench() {}

    /** Something that stores one row durably for a caller; {@code turn} counts up from 0 for each caller. */
    interface Contender extends AutoCloseable {
        void store(int caller, long turn) throws Exception;
    }

    /** Runs and prints. */
    public static void main(String[] args) throws Exception {
        int turns = args.length > 0 ? Integer.parseInt(args[0]) : 4;
        Path folder = Files.createTempDirectory("brightseam-bench");
        try {
            System.out.println("callers | bare, a commit each/s | bare, grouped/s | ledger appends/s | of grouped");
            for (int callers : new int[] {1, 8, 64}) {
                print(folder.resolve("callers" + callers), callers, turns);
            }
        } finally {
            delete(folder);
        }
    }

    private static void print(Path folder, int callers, int turns) throws Exception {
        long[] counts = new long[3];
        try (Contender single = new BareCommits(folder.resolve("single"), 1);
                Contender grouped = new BareCommits(folder.resolve("grouped"), GROUP_MAX);
                Contender ledger = new LedgerAppends(folder.resolve("ledger"))) {
            List<Contender> contenders = List.of(single, grouped, ledger);
            long[][] next = new long[contenders.size()][callers];
            for (int turn = 0; turn <= turns; turn++) {
                for (int i = 0; i < contenders.size(); i++) {
                    long stored = stored(contenders.get(i), next[i], TURN_NANOS);
                    counts[i] += turn == 0 ? 0 : stored;
                }
            }
        }
        System.out.printf("%7d | %21d | %15d | %16d | %10.2f%n",
                callers, counts[0] / turns, counts[1] / turns, counts[2] / turns, (double) counts[2] / counts[1]);
    }

    /** How many rows the callers, one for each of {@code next}, have stored together in {@code nanos}. */
    static long stored(Contender contender, long[] next, long nanos) throws Exception {
        LongAdder count = new LongAdder();
        long end = System.nanoTime() + nanos;
        List<Thread> threads = new ArrayList<>();
        for (int caller = 0; caller < next.length; caller++) {
            int own = caller;
            threads.add(Thread.ofPlatform().start(() -> repeat(contender, own, next, end, count)));
        }
        for (Thread thread : threads) {
            thread.join();
        }
        return count.sum();
    }

    private static void repeat(Contender contender, int caller, long[] next, long end, LongAdder count) {
        try {
            while (System.nanoTime() < end) {
                contender.store(caller, next[caller]++);
                count.increment();
            }
        } catch (Exception failure) {
            throw new IllegalStateException(failure);
        }
    }

    static void delete(Path folder) throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}

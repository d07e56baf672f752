package brightseam.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * Tablets that scan at once, each on a beat of its own. A scan's time counts from when it was due, so that one that is
 * held up by those before it is not forgiven.
 */
final class Tablets {

    private static final long SEED = 20_260;

    private final int count;
    private final long beatNanos;
    private final List<Long> all = new ArrayList<>();
    private final List<Long> recorded = new ArrayList<>();
    private long rounds;

    /** {@code count} tablets that scan every {@code beatMillis}. */
    Tablets(int count, long beatMillis) {
        this.count = count;
        this.beatNanos = TimeUnit.MILLISECONDS.toNanos(beatMillis);
    }

    /** What a scan comes to. */
    interface Scans {
        /** Does one scan; answers whether something was put on disk for it. */
        boolean scan(SplittableRandom chance) throws Exception;
    }

    /** Has every tablet do {@code scans}, and keeps the times. */
    void round(Scans work, int scans) throws InterruptedException {
        List<Thread> threads = new ArrayList<>();
        long start = System.nanoTime() + beatNanos;
        rounds++;
        for (int tablet = 0; tablet < count; tablet++) {
            SplittableRandom chance = new SplittableRandom(SEED + rounds * 1_000 + tablet);
            long first = start + chance.nextLong(beatNanos);
            threads.add(Thread.ofPlatform().start(() -> scan(work, chance, first, scans)));
        }
        for (Thread thread : threads) {
            thread.join();
        }
    }

    /** How many there are. */
    int tablets() {
        return count;
    }

    /** How many scans were done. */
    int scans() {
        return all.size();
    }

    /** The time that {@code share} of all scans stayed below, in milliseconds. */
    double millis(double share) {
        return millis(all, share);
    }

    /** The same of those scans for which something was put on disk. */
    double recordedMillis(double share) {
        return millis(recorded, share);
    }

    private void scan(Scans work, SplittableRandom chance, long first, int scans) {
        List<Long> own = new ArrayList<>();
        List<Long> ownRecorded = new ArrayList<>();
        for (int scan = 0; scan < scans; scan++) {
            long due = first + scan * beatNanos;
            while (System.nanoTime() < due) {
                LockSupport.parkNanos(due - System.nanoTime());
            }
            boolean written = done(work, chance);
            long took = System.nanoTime() - due;
            own.add(took);
            if (written) {
                ownRecorded.add(took);
            }
        }
        synchronized (all) {
            all.addAll(own);
            recorded.addAll(ownRecorded);
        }
    }

    private static boolean done(Scans work, SplittableRandom chance) {
        try {
            return work.scan(chance);
        } catch (Exception failure) {
            throw new IllegalStateException(failure);
        }
    }

    private static double millis(List<Long> nanos, double share) {
        List<Long> sorted = nanos.stream().sorted().toList();
        return sorted.get((int) Math.min(sorted.size() - 1, Math.floor(share * sorted.size()))) / 1e6;
    }
}

package brightseam.ledger.shell;

import brightseam.ledger.Entry;
import java.util.List;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Reads what the ledger of several nodes grows by, own entries and those of other nodes, each once and in order of
 * position. It looks when it is woken, and several times a second besides, since nobody says what others wrote.
 */
final class Tail implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(Tail.class);
    private static final long LOOK_MILLIS = 100;
    private static final int ENTRIES_AT_ONCE = 500;
    private static final long END_WAIT_MILLIS = 5_000;

    private final EntryRows rows;
    private final Consumer<List<Entry>> heard;
    private final Semaphore woken = new Semaphore(0);
    private final Thread thread = Thread.ofPlatform().daemon().name("ledger-tail").unstarted(this::run);
    private volatile boolean ended;
    private boolean failing;
    private long position;

    /** Hands what is stored after now to {@code heard}. */
    Tail(EntryRows rows, Consumer<List<Entry>> heard) {
        this.rows = rows;
        this.heard = heard;
        this.position = rows.lastPosition();
    }

    void start() {
        thread.start();
    }

    /** Looks at once; returns at once. */
    void wake() {
        woken.release();
    }

    /** Looks a last time, then ends. */
    @Override
    public void close() {
        ended = true;
        wake();
        try {
            thread.join(END_WAIT_MILLIS);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private void run() {
        boolean last = false;
        while (!last) {
            last = ended;
            look();
            await();
        }
    }

    private void await() {
        try {
            if (!ended && woken.tryAcquire(LOOK_MILLIS, TimeUnit.MILLISECONDS)) {
                woken.drainPermits();
            }
        } catch (InterruptedException interrupted) {
            ended = true;
        }
    }

    private void look() {
        try {
            for (List<Entry> next = next(); !next.isEmpty(); next = next()) {
                heard.accept(next);
                position = next.getLast().position();
            }
            failing = false;
        } catch (RuntimeException failure) {
            if (!failing) {
                LOG.error("the ledger cannot be read on; it is tried again", failure);
            }
            failing = true;
        }
    }

    private List<Entry> next() {
        return rows.allAfter(position, ENTRIES_AT_ONCE);
    }
}

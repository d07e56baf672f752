package brightseam.check.shell;

import brightseam.check.BrokenLink;
import brightseam.ledger.Entry;
import brightseam.ledger.shell.Projection;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import javax.sql.DataSource;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** Replays entries into one projection's fresh tables; a portion is one transaction. */
final class ReplayThread {

    private static final int WAITING_MAX = 4;
    private static final List<Entry> END = List.of();

    private final Projection projection;
    private final TransactionTemplate transaction;
    private final BlockingQueue<List<Entry>> waiting = new ArrayBlockingQueue<>(WAITING_MAX);
    private final Thread thread;
    private volatile BrokenLink failed;
    private boolean ended;

    ReplayThread(Projection projection, DataSource fresh) {
        this.projection = projection;
        this.transaction = new TransactionTemplate(new JdbcTransactionManager(fresh));
        this.thread = Thread.ofPlatform().name("replay-" + projection.tables().getFirst()).daemon().start(this::run);
    }

    Projection projection() {
        return projection;
    }

    void put(List<Entry> entries) {
        try {
            waiting.put(entries);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while rows were made anew", interrupted);
        }
    }

    /** Waits until all is replayed; answers what could not be. May be asked again. */
    Optional<BrokenLink> end() {
        if (!ended) {
            ended = true;
            put(END);
            try {
                thread.join();
            } catch (InterruptedException interrupted) {
                Thread.currentThread().interrupt();
            }
        }
        return Optional.ofNullable(failed);
    }

    private void run() {
        try {
            for (List<Entry> entries = waiting.take(); !entries.isEmpty(); entries = waiting.take()) {
                if (failed == null) {
                    List<Entry> portion = entries;
                    transaction.executeWithoutResult(status -> portion.forEach(this::apply));
                }
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private void apply(Entry entry) {
        if (failed == null) {
            try {
                projection.apply(entry);
            } catch (RuntimeException failure) {
                failed = new BrokenLink(
                        "entry " + entry.position() + " (" + entry.type() + " of " + entry.stream() + ")",
                        "cannot be replayed into " + String.join(", ", projection.tables()), "a known event",
                        String.valueOf(failure.getMessage()));
            }
        }
    }
}

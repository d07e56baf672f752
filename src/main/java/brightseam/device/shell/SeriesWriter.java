package brightseam.device.shell;

import brightseam.kernel.SupplyId;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Brings readings into the database, on one thread. Where that fails they stay in memory and are tried again, so that
 * nothing is lost while the server runs.
 */
final class SeriesWriter implements AutoCloseable {

    /** With the time of the write itself below a second: what a killed server loses at most. */
    private static final long PAUSE_MILLIS = 750;
    private static final Logger LOG = LoggerFactory.getLogger(SeriesWriter.class);

    private final SeriesRows rows;
    private final Map<SupplyId, LiveMeter> live;
    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(
            work -> Thread.ofPlatform().daemon().name("series-writer").unstarted(work));

    SeriesWriter(SeriesRows rows, Map<SupplyId, LiveMeter> live) {
        this.rows = rows;
        this.live = live;
    }

    /** Begins to write; calls {@code after} each time. */
    void start(Runnable after) {
        thread.scheduleWithFixedDelay(() -> {
            try {
                write();
                after.run();
            } catch (RuntimeException failure) {
                LOG.error("readings could not be stored and wait in memory", failure);
            }
        }, PAUSE_MILLIS, PAUSE_MILLIS, TimeUnit.MILLISECONDS);
    }

    /** Returns once everything taken before is in the database; throws what the database threw. */
    void flush() {
        CompletableFuture.runAsync(this::write, thread).join();
    }

    /** Writes a last time what it can. */
    @Override
    public void close() {
        try {
            flush();
        } catch (RuntimeException failure) {
            LOG.error("the last readings could not be stored", failure);
        }
        thread.shutdown();
    }

    private void write() {
        live.forEach((meter, one) -> one.due().ifPresent(due -> {
            if (due.blocks().isEmpty()) {
                rows.addTail(meter, due.number(), due.tail());
            } else {
                rows.addBlocks(meter, due.number(), due.blocks(), due.through());
            }
            one.stored(due);
        }));
    }
}

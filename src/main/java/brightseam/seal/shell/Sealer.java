package brightseam.seal.shell;

import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Subscription;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Has sealed what was stored, within a time; on a thread of its own, so that no writer waits for it. */
final class Sealer implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(Sealer.class);
    /** For what another node stored, and after a failure. */
    private static final long LOOK_MILLIS = 10_000;
    private static final long END_WAIT_SECONDS = 10;

    private final Runnable seal;
    private final long millis;
    private final AtomicBoolean isDue = new AtomicBoolean();
    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(
            work -> Thread.ofPlatform().daemon().name("ledger-sealer").unstarted(work));
    private final Subscription subscription;

    Sealer(Ledger ledger, Runnable seal, long millis) {
        this.seal = seal;
        this.millis = millis;
        this.subscription = ledger.onStored(stored -> due());
        thread.scheduleWithFixedDelay(this::seal, 0, LOOK_MILLIS, TimeUnit.MILLISECONDS);
    }

    /** Seals what is left and ends. */
    @Override
    public void close() {
        subscription.close();
        try {
            thread.execute(this::seal);
            thread.shutdown();
            thread.awaitTermination(END_WAIT_SECONDS, TimeUnit.SECONDS);
        } catch (RejectedExecutionException closedBefore) {
            LOG.debug("closed twice");
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private void due() {
        if (isDue.compareAndSet(false, true)) {
            try {
                thread.schedule(this::seal, millis, TimeUnit.MILLISECONDS);
            } catch (RejectedExecutionException closedMeanwhile) {
                LOG.debug("closed while something was stored");
            }
        }
    }

    private void seal() {
        isDue.set(false);
        try {
            seal.run();
        } catch (RuntimeException failure) {
            LOG.error("the ledger was not sealed", failure);
        }
    }
}

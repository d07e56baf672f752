package brightseam.seal.shell;

import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Subscription;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
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
    private final Runnable sealAtEnd;
    private final long millis;
    private final AtomicBoolean isDue = new AtomicBoolean();
    private boolean isFailing;
    private final ScheduledExecutorService thread = QuietThread.named("ledger-sealer");
    private final Subscription subscription;

    Sealer(Ledger ledger, Runnable seal, Runnable sealAtEnd, long millis) {
        this.seal = seal;
        this.sealAtEnd = sealAtEnd;
        this.millis = millis;
        this.subscription = ledger.onStored(stored -> due());
        thread.scheduleWithFixedDelay(() -> seal(seal), 0, LOOK_MILLIS, TimeUnit.MILLISECONDS);
    }

    /** Seals what is left and ends. */
    @Override
    public void close() {
        subscription.close();
        try {
            thread.submit(() -> seal(sealAtEnd)).get(END_WAIT_SECONDS, TimeUnit.SECONDS);
        } catch (RejectedExecutionException | ExecutionException | TimeoutException notSealed) {
            LOG.debug("the last entries are sealed at the next start", notSealed);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
        thread.shutdown();
    }

    private void due() {
        if (isDue.compareAndSet(false, true)) {
            try {
                thread.schedule(() -> seal(seal), millis, TimeUnit.MILLISECONDS);
            } catch (RejectedExecutionException closedMeanwhile) {
                LOG.debug("closed while something was stored");
            }
        }
    }

    private void seal(Runnable work) {
        isDue.set(false);
        try {
            work.run();
            isFailing = false;
        } catch (RuntimeException failure) {
            if (!isFailing) {
                LOG.error("the ledger was not sealed", failure);
            }
            isFailing = true;
        }
    }
}

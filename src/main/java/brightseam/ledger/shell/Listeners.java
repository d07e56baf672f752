package brightseam.ledger.shell;

import brightseam.ledger.Entry;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.Consumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Who is told of stored entries, each on a thread of its own. What a slow one has not heard yet waits in memory. */
final class Listeners implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(Listeners.class);

    private final List<Listener> listeners = new CopyOnWriteArrayList<>();

    Subscription add(Consumer<List<Entry>> heard) {
        Listener listener = new Listener(heard, Executors.newSingleThreadExecutor(
                work -> Thread.ofPlatform().daemon().name("ledger-listener").unstarted(work)));
        listeners.add(listener);
        return () -> {
            listeners.remove(listener);
            listener.thread().shutdown();
        };
    }

    /** Hands {@code entries} over and returns at once. */
    void tell(List<Entry> entries) {
        listeners.forEach(listener -> listener.tell(entries));
    }

    /** Tells nobody any more; what was handed over is still heard. */
    @Override
    public void close() {
        listeners.forEach(listener -> listener.thread().shutdown());
        listeners.clear();
    }

    private record Listener(Consumer<List<Entry>> heard, ExecutorService thread) {
        void tell(List<Entry> entries) {
            try {
                thread.execute(() -> hear(entries));
            } catch (RejectedExecutionException closedMeanwhile) {
                LOG.debug("a listener closed while it was told");
            }
        }

        private void hear(List<Entry> entries) {
            try {
                heard.accept(entries);
            } catch (RuntimeException failure) {
                LOG.error("a listener failed", failure);
            }
        }
    }
}

package brightseam.device.shell;

import brightseam.device.MeterNow;
import brightseam.device.Trouble;
import brightseam.kernel.SupplyId;
import brightseam.ledger.shell.Subscription;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Function;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Who follows which meter. A slow watcher holds up nobody: it is told the latest state once it listens again. */
final class Watchers implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(Watchers.class);

    private final Function<SupplyId, MeterNow> now;
    private final Map<SupplyId, List<Watcher>> watchers = new ConcurrentHashMap<>();
    private final Map<SupplyId, Set<Trouble>> told = new ConcurrentHashMap<>();
    private final ExecutorService threads = Executors.newVirtualThreadPerTaskExecutor();

    Watchers(Function<SupplyId, MeterNow> now) {
        this.now = now;
    }

    Subscription add(SupplyId meter, Consumer<MeterNow> heard) {
        Watcher watcher = new Watcher(meter, heard, new AtomicBoolean());
        watchers.computeIfAbsent(meter, any -> new CopyOnWriteArrayList<>()).add(watcher);
        return () -> watchers.get(meter).remove(watcher);
    }

    /** Tells who follows {@code meter}, and returns at once. */
    void tell(SupplyId meter) {
        watchers.getOrDefault(meter, List.of()).forEach(this::tell);
    }

    /** Tells who follows a meter whose troubles have changed by time alone. */
    void tellOfTime() {
        watchers.forEach((meter, mine) -> {
            Set<Trouble> troubles = mine.isEmpty() ? Set.of() : now.apply(meter).troubles();
            if (!mine.isEmpty() && !troubles.equals(told.put(meter, troubles))) {
                mine.forEach(this::tell);
            }
        });
    }

    @Override
    public void close() {
        threads.shutdown();
    }

    private void tell(Watcher watcher) {
        if (!watcher.waiting().compareAndSet(false, true)) {
            return;
        }
        try {
            threads.execute(() -> hear(watcher));
        } catch (RejectedExecutionException closing) {
            LOG.debug("nobody is told any more");
        }
    }

    private void hear(Watcher watcher) {
        synchronized (watcher.waiting()) {
            watcher.waiting().set(false);
            try {
                watcher.heard().accept(now.apply(watcher.meter()));
            } catch (RuntimeException failure) {
                LOG.error("a watcher of {} failed", watcher.meter(), failure);
            }
        }
    }

    /** One watcher; {@code waiting} while it is about to be told. */
    private record Watcher(SupplyId meter, Consumer<MeterNow> heard, AtomicBoolean waiting) {}
}

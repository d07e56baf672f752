package brightseam.ledger.shell;

import brightseam.ledger.Appended;
import brightseam.ledger.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The one thread that writes: it takes what waits as a group, has it stored, and answers. */
final class LedgerWriter {

    private static final Logger LOG = LoggerFactory.getLogger(LedgerWriter.class);
    private static final int QUEUE_MAX = 1_024;
    private static final int GROUP_MAX = 256;
    private static final long ROOM_WAIT_SECONDS = 5;
    private static final String CLOSED = "the ledger is closed";

    private final BlockingQueue<Request> queue = new ArrayBlockingQueue<>(QUEUE_MAX);
    private final Function<List<Request.Store>, List<Appended>> group;
    private final Consumer<List<Entry>> stored;
    private final Thread thread = new Thread(this::run, "ledger-writer");
    private volatile boolean ended;

    /** Has groups stored by {@code group}, one outcome for each request, and tells {@code stored} what was. */
    LedgerWriter(Function<List<Request.Store>, List<Appended>> group, Consumer<List<Entry>> stored) {
        this.group = group;
        this.stored = stored;
    }

    void start() {
        thread.start();
    }

    boolean isCurrentThread() {
        return Thread.currentThread() == thread;
    }

    /** Queues {@code request}; refuses it where the writer has ended or no room is found within seconds. */
    void submit(Request request) {
        if (ended) {
            request.refuse(CLOSED);
        } else if (!isQueued(request)) {
            request.refuse("too many appends wait; try again");
        } else if (ended && queue.remove(request)) {
            request.refuse(CLOSED);
        }
    }

    /** Lets the writer finish what waits, then ends it; gives up waiting after {@code seconds}. */
    void end(long seconds) {
        submit(new Request.End());
        try {
            thread.join(TimeUnit.SECONDS.toMillis(seconds));
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private boolean isQueued(Request request) {
        try {
            return queue.offer(request, ROOM_WAIT_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private void run() {
        List<Request> waiting = new ArrayList<>();
        boolean open = true;
        while (open) {
            try {
                waiting.add(queue.take());
                queue.drainTo(waiting, GROUP_MAX - 1);
                open = waiting.stream().noneMatch(Request.End.class::isInstance);
                process(waiting);
            } catch (InterruptedException interrupted) {
                open = false;
            }
            waiting.clear();
        }
        ended = true;
        queue.drainTo(waiting);
        waiting.forEach(request -> request.refuse(CLOSED));
    }

    private void process(List<Request> waiting) {
        List<Request.Store> together = new ArrayList<>();
        for (Request request : waiting) {
            switch (request) {
                case Request.Store one -> together.add(one);
                case Request.Alone alone -> {
                    answer(together);
                    together.clear();
                    run(alone);
                }
                case Request.End end -> { }
            }
        }
        answer(together);
    }

    private static void run(Request.Alone alone) {
        try {
            alone.work().run();
            alone.done().complete(null);
        } catch (RuntimeException | Error failure) {
            alone.done().completeExceptionally(failure);
        }
    }

    private void answer(List<Request.Store> together) {
        if (together.isEmpty()) {
            return;
        }
        List<Appended> outcomes;
        try {
            outcomes = group.apply(together);
        } catch (RuntimeException | Error failure) {
            LOG.error("{} appends were not stored", together.size(), failure);
            together.forEach(request -> request.refuse(GroupStore.reason(failure)));
            return;
        }
        for (int i = 0; i < together.size(); i++) {
            together.get(i).answer().complete(outcomes.get(i));
        }
        for (Appended outcome : outcomes) {
            if (outcome instanceof Appended.Stored done && !done.entries().isEmpty()) {
                stored.accept(done.entries());
            }
        }
    }
}

package brightseam.device.shell;

import brightseam.device.Reading;
import brightseam.device.Series;
import brightseam.kernel.SupplyId;
import brightseam.ledger.NotStoredException;
import brightseam.ledger.shell.Lead;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * This node's part in keeping the readings. The lead keeps them: it judges them, holds the newest in memory and writes
 * them down. Any other node shows what is written down, looking several times a second, and hands what comes in
 * there to the lead by way of the database.
 */
final class SeriesNode implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(SeriesNode.class);
    private static final long LOOK_MILLIS = 250;
    private static final long ASK_MILLIS = 20;
    private static final long ANSWER_MILLIS_MAX = 10_000;

    private final Lead lead;
    private final SeriesRows rows;
    private final SeriesPost post;
    private final LongSupplier nowMillis;
    private final Map<SupplyId, LiveMeter> live = new ConcurrentHashMap<>();
    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(
            work -> Thread.ofPlatform().daemon().name("series-node").unstarted(work));
    private volatile boolean leading;
    /** What was before this node began to keep the readings is settled: others may have proven something about it. */
    private volatile long settledMillis;

    SeriesNode(Lead lead, SeriesRows rows, SeriesPost post, LongSupplier nowMillis) {
        this.lead = lead;
        this.rows = rows;
        this.post = post;
        this.nowMillis = nowMillis;
        this.leading = lead.isLead();
        this.settledMillis = nowMillis.getAsLong() - 1;
    }

    /** What this node knows of every meter that was asked for. */
    Map<SupplyId, LiveMeter> live() {
        return live;
    }

    LiveMeter live(SupplyId meter) {
        return live.computeIfAbsent(meter, this::read);
    }

    /** Whether this node keeps the readings. */
    boolean keeps() {
        return leading;
    }

    /**
     * Begins to look, where other nodes may write.
     *
     * @param taker takes readings here
     * @param flush brings what was taken into the database
     * @param changed is told of a meter of which another node stored something
     */
    void start(BiConsumer<SupplyId, List<Reading>> taker, Runnable flush, Consumer<SupplyId> changed) {
        thread.scheduleWithFixedDelay(() -> {
            try {
                look(taker, flush, changed);
            } catch (RuntimeException failure) {
                LOG.error("readings could not be passed between nodes; it is tried again", failure);
            }
        }, LOOK_MILLIS, LOOK_MILLIS, TimeUnit.MILLISECONDS);
    }

    /** Hands {@code readings} to the node that keeps them. */
    void send(SupplyId meter, List<Reading> readings) {
        post.send(meter, readings);
    }

    /**
     * Has the node that keeps the readings settle {@code meter}, and reads what is stored then.
     *
     * @throws NotStoredException where no node answers within seconds
     */
    void settleThere(SupplyId meter, long untilMillis) {
        long number = post.askToSettle(meter, untilMillis);
        long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(ANSWER_MILLIS_MAX);
        while (post.isOpen(number)) {
            if (System.nanoTime() > end) {
                throw new NotStoredException("the node that keeps the readings does not answer");
            }
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(ASK_MILLIS));
        }
        live.put(meter, read(meter));
    }

    @Override
    public void close() {
        thread.shutdown();
    }

    private void look(BiConsumer<SupplyId, List<Reading>> taker, Runnable flush, Consumer<SupplyId> changed) {
        boolean now = lead.isLead();
        if (now != leading) {
            change(now, flush);
        }
        if (leading) {
            answer(taker, flush);
        } else {
            live.replaceAll((meter, known) -> refreshed(meter, known, changed));
        }
    }

    private void change(boolean leads, Runnable flush) {
        if (leads) {
            settledMillis = nowMillis.getAsLong() - 1;
            live.clear();
            leading = true;
        } else {
            leading = false;
            handOver(flush);
            live.clear();
        }
    }

    /** What this node took while it did not know yet that another leads. */
    private void handOver(Runnable flush) {
        try {
            flush.run();
        } catch (RuntimeException takenByTheOther) {
            LOG.warn("readings are handed to the node that leads now: {}", takenByTheOther.getMessage());
            live.forEach((meter, one) -> {
                List<Reading> unsaved = list(one.unsaved());
                if (!unsaved.isEmpty()) {
                    send(meter, unsaved);
                }
            });
        }
    }

    private void answer(BiConsumer<SupplyId, List<Reading>> taker, Runnable flush) {
        List<SeriesPost.Letter> letters = post.waiting();
        if (letters.isEmpty()) {
            return;
        }
        letters.forEach(letter -> letter.readings().ifPresentOrElse(
                readings -> taker.accept(letter.meter(), list(readings)),
                () -> live(letter.meter()).settle(letter.untilMillis())));
        flush.run();
        letters.forEach(post::done);
    }

    private LiveMeter refreshed(SupplyId meter, LiveMeter known, Consumer<SupplyId> changed) {
        LiveMeter stored = read(meter);
        if (stored.isAs(known)) {
            return known;
        }
        changed.accept(meter);
        return stored;
    }

    private LiveMeter read(SupplyId meter) {
        return new LiveMeter(rows.end(meter), settledMillis);
    }

    private static List<Reading> list(Series series) {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < series.size(); i++) {
            readings.add(series.at(i));
        }
        return readings;
    }
}

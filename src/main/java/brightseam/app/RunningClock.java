package brightseam.app;

import brightseam.kernel.Moment;
import brightseam.kernel.shell.ShopClock;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The shop's clock while the server runs; notes down every two seconds where it stands. */
class RunningClock implements ShopClock, AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(RunningClock.class);
    private static final long NOTE_SECONDS = 2;

    private final Supplier<TimeLine.Sample> clocks;
    private final Consumer<TimeLine.Anchor> notes;
    private final ScheduledExecutorService noting = Executors.newSingleThreadScheduledExecutor(
            work -> Thread.ofPlatform().daemon().name("shop-clock").unstarted(work));
    private TimeLine line;
    private long latestMillis;

    /** Goes on from {@code line}; reads {@code clocks}; hands {@code notes} what must outlive the process. */
    RunningClock(TimeLine line, Supplier<TimeLine.Sample> clocks, Consumer<TimeLine.Anchor> notes) {
        this.line = line;
        this.clocks = clocks;
        this.notes = notes;
    }

    /** Begins to note down where the clock stands. */
    void start() {
        noting.scheduleWithFixedDelay(this::note, 0, NOTE_SECONDS, TimeUnit.SECONDS);
    }

    @Override
    public synchronized Moment now() {
        TimeLine.Sample sample = clocks.get();
        line = line.to(sample);
        Moment moment = line.at(sample);
        latestMillis = Math.max(latestMillis, moment.elapsedMillis());
        return new Moment(moment.wall(), latestMillis);
    }

    @Override
    public synchronized double speed() {
        return line.speed();
    }

    @Override
    public synchronized boolean isDemo() {
        return line.demo();
    }

    /** Notes down a last time where the clock stands. */
    @Override
    public void close() {
        noting.shutdown();
        note();
    }

    /** Puts what {@code change} makes of the time line in its place, and notes it down at once. */
    final void change(BiFunction<TimeLine, TimeLine.Sample, TimeLine> change) {
        synchronized (this) {
            line = change.apply(line, clocks.get());
        }
        note();
    }

    /** As {@link #change}, without noting it down; a time line that fell back stands still until it has caught up. */
    final synchronized void follow(BiFunction<TimeLine, TimeLine.Sample, TimeLine> change) {
        line = change.apply(line, clocks.get());
    }

    private void note() {
        try {
            notes.accept(anchor());
        } catch (RuntimeException failure) {
            LOG.warn("the clock could not be noted down: {}", failure.getMessage());
        }
    }

    /** Where the clock stands now. */
    final synchronized TimeLine.Anchor anchor() {
        TimeLine.Sample sample = clocks.get();
        line = line.to(sample);
        return line.anchor(sample);
    }
}

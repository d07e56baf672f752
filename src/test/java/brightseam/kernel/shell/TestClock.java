package brightseam.kernel.shell;

import brightseam.kernel.Moment;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** A clock that stands still until a test moves it. Begins on an invented morning, one hour into the shop's time. */
public final class TestClock implements DemoClock {

    /** What the wall says at first. */
    public static final Instant MORNING = Instant.parse("2031-03-04T08:00:00Z");

    private final List<Runnable> skipped = new CopyOnWriteArrayList<>();
    private Moment now = new Moment(MORNING, Duration.ofHours(1).toMillis());
    private double speed = 1;
    private boolean demo;

    @Override
    public synchronized Moment now() {
        return now;
    }

    /** Moves both time lines forward. */
    public void advance(Duration duration) {
        skip(duration);
    }

    /** Steps the wall time only, as a person or a time server would; elapsed time stays. */
    public synchronized void setWall(Instant wall) {
        now = new Moment(wall, now.elapsedMillis());
    }

    /** Lets the clock say that it is a demo clock, or not. */
    public synchronized void setDemo(boolean demo) {
        this.demo = demo;
    }

    @Override
    public void skip(Duration duration) {
        if (duration.isNegative()) {
            throw new IllegalArgumentException("time runs forward only");
        }
        synchronized (this) {
            now = now.plus(duration);
        }
        skipped.forEach(Runnable::run);
    }

    @Override
    public void onSkip(Runnable listener) {
        skipped.add(listener);
    }

    @Override
    public synchronized double speed() {
        return speed;
    }

    @Override
    public synchronized void setSpeed(double speed) {
        this.speed = speed;
    }

    @Override
    public synchronized boolean isDemo() {
        return demo;
    }
}

package brightseam.app;

import brightseam.kernel.shell.DemoClock;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** The demo shop's clock. */
final class HurriedClock extends RunningClock implements DemoClock {

    private static final double SPEED_MIN = 0.1;
    private static final double SPEED_MAX = 3_600;

    private final List<Runnable> skipped = new CopyOnWriteArrayList<>();

    HurriedClock(TimeLine line, Supplier<TimeLine.Sample> clocks, Consumer<TimeLine.Anchor> notes) {
        super(line, clocks, notes);
    }

    @Override
    public void setSpeed(double speed) {
        change((line, now) -> line.withSpeed(checked(speed), now));
    }

    @Override
    public void skip(Duration duration) {
        if (duration.isNegative()) {
            throw new IllegalArgumentException("time runs forward only");
        }
        change((line, now) -> line.skip(duration, now));
        skipped.forEach(Runnable::run);
    }

    @Override
    public void onSkip(Runnable listener) {
        skipped.add(listener);
    }

    /** Returns {@code speed} where a demo clock may run at it. */
    static double checked(double speed) {
        if (!(speed >= SPEED_MIN && speed <= SPEED_MAX)) {
            throw new IllegalArgumentException("demo speed: between " + SPEED_MIN + " and " + SPEED_MAX);
        }
        return speed;
    }
}

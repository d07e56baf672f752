package brightseam.people.shell;

import brightseam.kernel.Moment;
import brightseam.kernel.shell.ShopClock;
import java.time.Duration;
import java.time.Instant;

/** The shop's clock stands still until a test sets it: only a PIN's age may depend on it. */
public final class StoppedClock implements ShopClock {

    private Instant wall = Instant.parse("2031-03-04T08:00:00Z");

    /** Moves the hands. */
    public void passDays(long days) {
        wall = wall.plus(Duration.ofDays(days));
    }

    @Override
    public Moment now() {
        return new Moment(wall, 0);
    }

    @Override
    public double speed() {
        return 1;
    }

    @Override
    public boolean isDemo() {
        return false;
    }
}

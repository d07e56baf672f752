package brightseam.people.shell;

import brightseam.kernel.Moment;
import brightseam.kernel.shell.ShopClock;
import java.time.Instant;

/** The shop's clock stands still: nothing about signing in may depend on it. */
public final class StoppedClock implements ShopClock {

    @Override
    public Moment now() {
        return new Moment(Instant.parse("2031-03-04T08:00:00Z"), 0);
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

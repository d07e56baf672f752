package brightseam.kernel.shell;

import java.time.Duration;

/** The demo shop's clock, which can be hurried. There is no such bean in a shop of one's own. */
public interface DemoClock extends ShopClock {

    /** How far behind the machine's wall time a new demo shop begins, so that it can have a past. */
    Duration HEAD_START = Duration.ofDays(22).plusHours(30);

    /** From now on {@code speed} shop seconds pass in one real second. Refuses anything outside 0.1 to 3600. */
    void setSpeed(double speed);

    /** Jumps forward by {@code duration}, on both time lines. Refuses a negative duration. */
    void skip(Duration duration);

    /** Calls {@code listener} after each skip, on the thread that skipped, before the skip returns. */
    void onSkip(Runnable listener);
}

package brightseam.chamber;

import java.time.Duration;

/**
 * What a kit usually asks of the chamber, for the forecast where nobody says more.
 *
 * @param fit how long the chamber is held fit: welding, cooling, waiting
 * @param lockPasses how often the lock is purged meanwhile
 */
public record UsualSession(Duration fit, int lockPasses) {

    /** Refuses a session of nothing and passes below zero. */
    public UsualSession {
        if (!fit.isPositive() || lockPasses < 0) {
            throw new IllegalArgumentException("usual session: longer than nothing, lock passes not below zero");
        }
    }
}

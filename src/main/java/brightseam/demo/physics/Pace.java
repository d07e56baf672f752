package brightseam.demo.physics;

import java.time.Duration;

/**
 * How finely a stretch of time is read. Somebody who skips hours gets the readings of each second of the last of them
 * and coarser ones before, so that no skip takes longer than some ten thousand steps; the gas itself is carried
 * exactly, whatever the step.
 *
 * @param coarseMillis the length of a step at first
 * @param fineFromMillis from then on a step is a second
 */
record Pace(long coarseMillis, long fineFromMillis) {

    static final long SECOND = 1_000;
    private static final long MINUTE = 60 * SECOND;
    /** A purge and a day's welding fit in. */
    private static final long FINE_MAX = Duration.ofHours(4).toMillis();
    /** Before somebody comes: enough to see a live gauge. */
    private static final long FINE_IDLE = Duration.ofMinutes(2).toMillis();
    private static final long COARSE_STEPS_MAX = 5_000;

    /** From {@code at} to {@code until}. */
    static Pace of(long at, long until, boolean attended) {
        long fineFrom = until - (attended ? FINE_MAX : FINE_IDLE);
        long coarse = Math.max(1, Math.ceilDiv(fineFrom - at, COARSE_STEPS_MAX * MINUTE)) * MINUTE;
        return new Pace(coarse, fineFrom);
    }

    /** The length of the step at {@code at}; steps end at whole multiples of it. */
    long step(long at) {
        return at + coarseMillis <= fineFromMillis ? coarseMillis : SECOND;
    }
}

package brightseam.app;

import brightseam.kernel.Moment;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/**
 * The arithmetic of the shop's clock; reads none itself.
 *
 * <p>Elapsed time follows the machine's steady counter, so a stepped wall clock neither stretches nor shortens it. The
 * counter stands still while the machine sleeps; the time since it was started does not, so what it is ahead is added.
 *
 * @param elapsedMillis elapsed time at {@code taken}, fractions kept so that they add up
 * @param demoWall the demo shop's wall time at {@code taken}; in a shop of one's own the machine's wall time counts
 * @param demo whether the wall time runs with the elapsed time
 * @param speed shop seconds in one real second
 * @param taken the machine's clocks when this was so
 */
record TimeLine(double elapsedMillis, Instant demoWall, boolean demo, double speed, Sample taken) {

    /** How far the two counters may differ before it is taken for a sleep; /proc/uptime is given in 10 ms. */
    private static final long SLEEP_MILLIS_MIN = 500;

    /**
     * The machine's clocks, read together.
     *
     * @param nanos a steady counter, comparable within one process
     * @param wall the machine's wall clock
     * @param bootId names the machine's start; empty where the system does not tell
     * @param uptimeMillis time since that start, sleep included; 0 where the system does not tell
     */
    record Sample(long nanos, Instant wall, String bootId, long uptimeMillis) {}

    /** Where the time line stood when it was last noted down. */
    record Anchor(long elapsedMillis, Instant shopWall, Instant machineWall, String bootId, long uptimeMillis) {}

    /** The time line of a shop that starts for the first time. */
    static TimeLine begin(boolean demo, double speed, Sample now) {
        return new TimeLine(0, now.wall(), demo, speed, now);
    }

    /** The same time line, but with {@code headStart} of it behind the machine's wall time; for a demo shop's past. */
    TimeLine begunEarlier(Duration headStart) {
        return new TimeLine(elapsedMillis, demoWall.minus(headStart), demo, speed, taken);
    }

    /**
     * Goes on after a restart, at least at {@code elapsedMillisMin}. The time between counts at speed 1: by the
     * machine's uptime where it has not been started anew, else by its wall clock, and never negative.
     */
    static TimeLine resume(Anchor anchor, long elapsedMillisMin, boolean demo, double speed, Sample now) {
        long away = Math.max(between(anchor, now), elapsedMillisMin - anchor.elapsedMillis());
        return new TimeLine(
                (double) anchor.elapsedMillis() + away, anchor.shopWall().plusMillis(away), demo, speed, now);
    }

    /** The shop's moment at {@code now}. */
    Moment at(Sample now) {
        TimeLine moved = to(now);
        Instant wall = demo ? moved.demoWall : now.wall();
        return new Moment(wall.truncatedTo(ChronoUnit.MILLIS), (long) moved.elapsedMillis);
    }

    /** This time line, moved on to {@code now}. */
    TimeLine to(Sample now) {
        double passed = Math.max(0, realMillis(now)) * speed;
        return new TimeLine(elapsedMillis + passed, plus(demoWall, passed), demo, speed, now);
    }

    /** From {@code now} on at {@code newSpeed}; what has passed stays as it was. */
    TimeLine withSpeed(double newSpeed, Sample now) {
        TimeLine moved = to(now);
        return new TimeLine(moved.elapsedMillis, moved.demoWall, demo, newSpeed, now);
    }

    /** Jumps forward by {@code duration} at {@code now}. */
    TimeLine skip(Duration duration, Sample now) {
        TimeLine moved = to(now);
        return new TimeLine(
                moved.elapsedMillis + duration.toMillis(), moved.demoWall.plus(duration), demo, speed, now);
    }

    /** The time line that stands at {@code elapsed} and {@code wall} now, as another node of the shop says. */
    TimeLine standingAt(double elapsed, Instant wall, double newSpeed, Sample now) {
        return new TimeLine(elapsed, wall, demo, newSpeed, now);
    }

    /** What to note down at {@code now}. */
    Anchor anchor(Sample now) {
        Moment moment = at(now);
        return new Anchor(moment.elapsedMillis(), moment.wall(), now.wall(), now.bootId(), now.uptimeMillis());
    }

    private double realMillis(Sample now) {
        double counted = (now.nanos() - taken.nanos()) / 1e6;
        double up = now.uptimeMillis() - taken.uptimeMillis();
        return up - counted > SLEEP_MILLIS_MIN ? up : counted;
    }

    private static long between(Anchor anchor, Sample now) {
        boolean sameStart = !anchor.bootId().isEmpty() && anchor.bootId().equals(now.bootId());
        long up = now.uptimeMillis() - anchor.uptimeMillis();
        long wall = Duration.between(anchor.machineWall(), now.wall()).toMillis();
        return sameStart && up >= 0 ? up : Math.max(0, wall);
    }

    private static Instant plus(Instant wall, double millis) {
        return wall.plusNanos((long) (millis * 1e6));
    }
}

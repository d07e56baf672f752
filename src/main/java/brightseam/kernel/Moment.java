package brightseam.kernel;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;

/**
 * One point in time, twice: the wall time that is printed and the elapsed time that holds are measured on.
 *
 * <p>Elapsed time only ever runs forward; a wall clock that is stepped neither stretches nor shortens it.
 *
 * @param wall what the clock on the wall said
 * @param elapsedMillis milliseconds on the shop's own time line, comparable across restarts
 */
public record Moment(Instant wall, long elapsedMillis) implements Comparable<Moment> {

    /** Refuses a missing wall time and a negative elapsed time. */
    public Moment {
        Objects.requireNonNull(wall, "wall");
        if (elapsedMillis < 0) {
            throw new IllegalArgumentException("elapsed time below zero: " + elapsedMillis);
        }
    }

    /** Elapsed time since {@code earlier}; negative where {@code earlier} is later. */
    public Duration since(Moment earlier) {
        return Duration.ofMillis(elapsedMillis - earlier.elapsedMillis);
    }

    /** The moment {@code duration} later, on both time lines. */
    public Moment plus(Duration duration) {
        return new Moment(wall.plus(duration), elapsedMillis + duration.toMillis());
    }

    /** Whether this moment lies before {@code other} on the elapsed time line. */
    public boolean isBefore(Moment other) {
        return elapsedMillis < other.elapsedMillis;
    }

    /** Whether this moment lies after {@code other} on the elapsed time line. */
    public boolean isAfter(Moment other) {
        return elapsedMillis > other.elapsedMillis;
    }

    @Override
    public int compareTo(Moment other) {
        return Long.compare(elapsedMillis, other.elapsedMillis);
    }
}

package brightseam.session;

import brightseam.kernel.Moment;
import java.time.Duration;
import java.util.Optional;

/**
 * The transfer lock. Its doors are a single value, so that both open cannot even be said.
 *
 * @param doors which door is open, or what goes on behind shut ones
 * @param clean whether the argon of a chamber that was fit has filled it since a door was last open
 * @param since from when on
 * @param need what its purge needs, while it is purged
 * @param cyclesDone cycles that its purge has had
 */
public record Lock(Doors doors, boolean clean, Moment since, Optional<LockNeed> need, int cyclesDone) {

    /** The doors. */
    public enum Doors {
        /** Both shut, nothing flows. */
        BOTH_SHUT,
        /** The outer one is open, to the shop. */
        OUTER_OPEN,
        /** Both shut, the air is driven out. */
        PURGING,
        /** The inner one is open, to the chamber. */
        INNER_OPEN
    }

    /** Both shut, air inside. */
    static Lock unused(Moment since) {
        return new Lock(Doors.BOTH_SHUT, false, since, Optional.empty(), 0);
    }

    Lock outerOpen(Moment at) {
        return new Lock(Doors.OUTER_OPEN, false, at, Optional.empty(), 0);
    }

    Lock purging(LockNeed with, Moment at) {
        return new Lock(Doors.PURGING, false, at, Optional.of(with), 0);
    }

    Lock cycled() {
        return new Lock(doors, clean, since, need, cyclesDone + 1);
    }

    Lock innerOpen(Moment at) {
        return new Lock(Doors.INNER_OPEN, false, at, need, cyclesDone);
    }

    /** The gas of the chamber is in it now, which is clean only where the chamber's is. */
    Lock innerShut(boolean chamberFit, Moment at) {
        return new Lock(Doors.BOTH_SHUT, chamberFit, at, need, cyclesDone);
    }

    /** How long it has been purged at {@code now}; zero where it is not. */
    public Duration purgedFor(Moment now) {
        return doors == Doors.PURGING ? now.since(since) : Duration.ZERO;
    }

    /** Whether a door is open. */
    public boolean hasDoorOpen() {
        return doors == Doors.OUTER_OPEN || doors == Doors.INNER_OPEN;
    }
}

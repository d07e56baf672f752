package brightseam.session;

import brightseam.kernel.Moment;
import java.util.Optional;

/**
 * Where a thing is.
 *
 * @param item the thing
 * @param where in which place
 * @param since from when on
 * @param inBy the number of the lock pass that brought it in; empty where it went in through the open chamber, or is
 *     not in yet
 */
public record Placed(Item item, Where where, Moment since, Optional<Integer> inBy) {

    /** The places of a session. */
    public enum Where {
        /** Checked in, in the open chamber: its pass-in is signed when the chamber is closed. */
        CHECKED_IN,
        /** In the lock, on its way in. */
        LOCK_INBOUND,
        /** In the closed chamber, passed in. */
        INSIDE,
        /** In the lock, on its way out. */
        LOCK_OUTBOUND,
        /** Taken out through the lock. */
        PASSED_OUT
    }

    /** Whether it lies in the lock. */
    public boolean isInLock() {
        return where == Where.LOCK_INBOUND || where == Where.LOCK_OUTBOUND;
    }

    /** Whether it was passed in and has not left: in the chamber, or in the lock on its way out. */
    public boolean isPassedIn() {
        return where == Where.INSIDE || where == Where.LOCK_OUTBOUND;
    }

    Placed at(Where next, Moment now) {
        return new Placed(item, next, now, inBy);
    }

    Placed through(int pass, Moment now) {
        return new Placed(item, Where.INSIDE, now, Optional.of(pass));
    }
}

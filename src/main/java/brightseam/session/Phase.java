package brightseam.session;

/** Where a session is in its life. */
public enum Phase {
    /** The chamber is open and the kit's list is scanned in. */
    CHECK_IN,
    /** The chamber is shut and no purge runs. */
    CLOSED,
    /** Argon drives the air out; it was never fit to weld yet. */
    PURGING,
    /** Oxygen and moisture have been inside their limits for as long as asked. */
    FIT,
    /** It was fit and is not any more. */
    UNFIT,
    /** The chamber was opened and everything signed. */
    ENDED,
    /** Given up before its end. */
    ABANDONED;

    /** Whether nothing more can be done in it. */
    public boolean isOver() {
        return this == ENDED || this == ABANDONED;
    }

    /** Whether the chamber is shut, so that things go in and out through the lock alone. */
    public boolean isShut() {
        return this == CLOSED || isPurged();
    }

    /** Whether argon flows. */
    public boolean isPurged() {
        return this == PURGING || this == FIT || this == UNFIT;
    }
}

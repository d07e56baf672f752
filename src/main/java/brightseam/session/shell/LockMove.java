package brightseam.session.shell;

/** What can be done at a transfer lock by touch; things are put in and taken out by scan. */
public enum LockMove {
    /** Open the outer door. */
    OPEN_OUTER,
    /** Shut the outer door, which begins the purge. */
    SHUT_OUTER,
    /** Begin the purge of the shut lock anew. */
    PURGE,
    /** Count one more cycle. */
    NOTE_CYCLE,
    /** Open the inner door. */
    OPEN_INNER,
    /** Shut the inner door. */
    SHUT_INNER
}

package brightseam.weld;

/** How far a joint has come. */
public enum JointStanding {
    /** No arc was begun on it. */
    PLANNED,
    /** An arc runs. */
    ARC_RUNNING,
    /** It stays in the argon until it is cool. */
    COOLING,
    /** The readings over it are not all in yet. */
    SETTLING,
    /** It is tacked, not welded. */
    TACKED,
    /** It is welded and waits to be judged. */
    WELDED,
    /** The inspector rejected it. */
    REJECTED,
    /** The inspector accepted it. */
    ACCEPTED;

    /** Whether the joint is too hot to leave the argon, or an arc is on it. */
    public boolean isHot() {
        return this == ARC_RUNNING || this == COOLING;
    }
}

package brightseam.planner;

/** What a plan is good for. Holds, gaps, tanks and hands bind it always. */
public sealed interface Goal {

    /**
     * Backwards from the sessions: every kit ready in time with its windows open, each kit begun as late as can be.
     * Measured: the time from a kit's first start to its due time, added up over the kits; where
     * baskets have no session, with the last end of these.
     */
    record ForSessions() implements Goal {}

    /** Forwards: everything ready, sessions met, the last basket as early as can be. Measured: the last end. */
    record Soonest() implements Goal {}

    /**
     * Forwards: as many baskets as can be ready by a time, sessions left aside; then those as early as can be.
     * Measured: the baskets left out. What has begun is never left out.
     *
     * @param limitSeconds the end of the shift
     */
    record ReadyBy(int limitSeconds) implements Goal {}
}

package brightseam.lineplan;

/** What the plan is made for. */
public enum Aim {
    /** Backwards from the chamber sessions: every kit ready together, its clean windows as young as can be. */
    FOR_SESSIONS,
    /** Everything as soon as can be. */
    SOONEST,
    /** As much as can still be ready before the shift ends. */
    STILL_TODAY
}

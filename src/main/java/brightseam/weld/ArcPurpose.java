package brightseam.weld;

/** What an arc is for. */
public enum ArcPurpose {
    /** Holds the pieces together until they are welded. */
    TACK,
    /** A pass of the weld. */
    WELD,
    /** Mends an imperfection. */
    REPAIR
}

package brightseam.weld;

/** Which part of the time that a joint is hot. */
public enum HotStretch {
    /** From the beginning of the arc, or from the arc before where the joint was still hot, to its end. */
    ARC,
    /** From the end of the arc until the joint is cool. */
    COOLING
}

package brightseam.procedure;

/** What a piece's surface is like when something touches it. */
public enum Surface {
    /** As it comes from the machine or the bench: what is left on it is cleaned off later. */
    UNCLEANED,
    /** Cleaned for welding, or being cleaned for the last time: what is left on it goes into the weld. */
    CLEANED
}

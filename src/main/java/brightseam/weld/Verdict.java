package brightseam.weld;

/** What an inspector says of a joint. */
public enum Verdict {
    /** It may stay as it is. */
    ACCEPT,
    /** It may not. */
    REJECT
}

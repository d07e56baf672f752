package brightseam.weld;

/** What a table of acceptance says, from best to worst. */
public enum Ruling {
    /** It may stay. */
    ACCEPT,
    /** It may stay where something else holds, which the table names. */
    CONDITIONAL,
    /** It may not stay. */
    REJECT;

    /** The worse of two. */
    public Ruling worse(Ruling other) {
        return compareTo(other) >= 0 ? this : other;
    }
}

package brightseam.procedure;

/** What may lie together in one basket at a step. */
public enum Mix {
    /** Every grade that the procedures of the load admit. */
    ANY,
    /** Pieces of one grade only, because a bath is set for it or carries metal over. */
    SAME_GRADE
}

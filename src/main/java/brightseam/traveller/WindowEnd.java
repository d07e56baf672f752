package brightseam.traveller;

/** Why a clean window ended. */
public enum WindowEnd {
    /** Time is up. */
    RUN_OUT,
    /** Something other than clean gloves touched the pieces. */
    TOUCHED,
    /** Rework went back to or before the step that opens it. */
    RETURNED,
    /** The pieces are in the chamber: it has done its work. */
    PASSED_IN,
    /** The last joint of the pieces is welded: it has done its work. */
    WELDED,
    /** The traveller was closed or scrapped. */
    TRAVELLER_ENDED
}

package brightseam.bins;

/** What made a bin unfit for cleaned parts. */
public enum Soiling {
    /** Parts went in whose clean window was not open. */
    UNCLEANED_PARTS,
    /** It was opened outside the clean area. */
    OPENED_IN_DIRTY_PLACE,
    /** A person saw or did something, such as a bare hand or a torn bag. */
    REPORTED
}

package brightseam.procedure;

/** How a procedure file in the folder stands to what is approved. */
public enum CandidateState {
    /** The file is the revision in use. */
    APPROVED,
    /** The file is an approved revision that a later one has replaced. */
    SUPERSEDED,
    /** The file is sound and new; a named person has to approve it before use. */
    AWAITING_APPROVAL,
    /** The file differs from the approved one of the same revision letter; refused until the letter changes. */
    CHANGED_WITHOUT_REVISION,
    /** The file's revision letter lies below the one in use and was never approved. */
    REVISION_TOO_LOW,
    /** The file has problems; nothing of it is used. */
    BAD
}

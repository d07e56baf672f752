package brightseam.traveller;

/** What a signature says. */
public enum Meaning {
    /** I did this step as written. */
    PERFORMED,
    /** I inspected and accept. */
    INSPECTED,
    /** I inspected and reject. */
    REJECTED,
    /** I decide what becomes of a nonconformance. */
    DISPOSITIONED,
    /** I correct an entry. */
    CORRECTED,
    /** I state that this step was done earlier, at the time that I give. */
    STATED_LATE,
    /** I set pieces of this lot apart. */
    SEPARATED,
    /** I say that something that touched the pieces was bad, or may have been. */
    SUSPECTED
}

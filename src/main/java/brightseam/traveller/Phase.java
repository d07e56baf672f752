package brightseam.traveller;

/** Where a traveller is in its life; quarantine is not a phase but follows from an open nonconformance. */
public enum Phase {
    /** On its way to the transfer lock. */
    ACTIVE,
    /** Through the transfer lock. */
    PASSED_IN,
    /** Every step signed, every inspection point stamped. */
    CLOSED,
    /** No piece is left. */
    SCRAPPED
}

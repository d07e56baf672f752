package brightseam.procedure;

/** Who passes a step. */
public enum SignedBy {
    /** A fabricator's signature. */
    FABRICATOR,
    /** A lead's signature. */
    LEAD,
    /** An inspector's stamp. */
    INSPECTOR
}

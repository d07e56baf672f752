package brightseam.procedure;

/** The kinds of step. */
public enum StepKind {
    /** Machine or hand work: cut, cope, deburr. */
    WORK,
    /** Held in a bath. */
    SOAK,
    /** Rinsed in water. */
    RINSE,
    /** Dried. */
    DRY,
    /** Wiped with solvent. */
    WIPE,
    /** Looked at or measured by the fabricator. */
    CHECK,
    /** An inspection point. */
    INSPECTION,
    /** Through the transfer lock into the chamber. */
    PASS_IN,
    /** Welded in the chamber. */
    WELD;

    /** Whether it takes something off the pieces and adds nothing, which quarantine must not delay. Common practice. */
    public boolean makesSafe() {
        return this == RINSE || this == CHECK || this == DRY;
    }
}

package brightseam.bins;

/** Whether something may be put into a bin. */
public enum Fitness {
    /** Ready for use. */
    FIT,
    /** A clean bin that has to be cleaned before anything goes in. */
    SOILED,
    /** A bag that has been opened or soiled; bags are not used twice. */
    SPENT
}

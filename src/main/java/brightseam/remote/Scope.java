package brightseam.remote;

/** What a shop system may do. */
public enum Scope {
    /** Read travellers, kits and records. */
    READ,
    /** Release travellers, for the lead who answers for it. */
    RELEASE
}

package brightseam.kernel;

/** What sort of thing touches titanium on its way to the chamber, besides bins, stations and people. */
public enum ContactKind {
    /** One fill of a bath. */
    BATH,
    /** A lot of gloves. */
    GLOVES,
    /** A lot of wiping cloths. */
    WIPES,
    /** A lot of solvent. */
    SOLVENT,
    /** A lot of cleaner. */
    CLEANER,
    /** A supply of water. */
    WATER,
    /** A lot of filler. */
    FILLER,
    /** A lot of bags. */
    BAGS,
    /** A tool. */
    TOOL,
    /** A gauge or another measuring instrument. */
    GAUGE,
    /** A cylinder, bundle or dewar of argon that the pieces were welded in. */
    ARGON
}

package brightseam.weld;

/** What keeps air from the back side of a joint while it is hot. */
public enum BackSide {
    /** Argon is led through the inside of the tube. */
    PURGED,
    /** The inside is open to the chamber through a vent, so that it holds what the chamber holds. */
    VENTED,
    /** Nothing is needed, for a reason that the map names. */
    OPEN
}

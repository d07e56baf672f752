package brightseam.demo.physics;

/** The well-mixed volumes of the simulation. */
public enum Space {
    /** The chamber itself. */
    CHAMBER,
    /** The transfer lock. */
    LOCK,
    /** The sleeves of the gloves, which breathe with the chamber. */
    SLEEVES,
    /** The room that all of it stands in and vents into. */
    ROOM
}

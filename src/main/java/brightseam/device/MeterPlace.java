package brightseam.device;

/** Where the gas is taken that a meter looks at. */
public enum MeterPlace {
    /** Inside the chamber. */
    CHAMBER,
    /** Inside the transfer lock. */
    LOCK,
    /** Behind the joint, in the purge of its back side. */
    BACK_SIDE,
    /** In the pipe or the vessel that the argon comes from. */
    SUPPLY,
    /** In the room, where people breathe. */
    ROOM
}

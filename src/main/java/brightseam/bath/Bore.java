package brightseam.bath;

/** Whether a bath reaches the inside of a tube. */
public enum Bore {
    /** Open or vented at both ends: the inside is wetted, and drains. */
    VENTED,
    /** Plugged or capped: the inside stays dry and does not count. */
    CLOSED
}

package brightseam.kernel;

/** How a label came in that set something off. What was typed is weaker evidence than what was read. */
public enum LabelEntry {
    /** Read by a hand scanner. */
    SCANNED,
    /** Read by the tablet's camera. */
    CAMERA,
    /** Typed on the tablet, as the last resort. */
    TYPED
}

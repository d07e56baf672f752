package brightseam.scan;

/** How a scan came in; recorded with it. */
public enum ScanSource {
    /** A hand scanner that sends its reading as keystrokes. */
    WEDGE,
    /** The tablet's camera. */
    CAMERA,
    /** Typed by hand, the last resort. */
    TYPED
}

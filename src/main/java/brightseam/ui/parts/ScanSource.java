package brightseam.ui.parts;

/** How a scan came in; recorded with it, because typing proves less than a label. */
public enum ScanSource {
    /** A hand scanner that types. */
    WEDGE,
    /** The tablet's camera. */
    CAMERA,
    /** Fingers, or pasted text. */
    TYPED;

    /** What the page calls {@code name}; anything unknown proves least and counts as typed. */
    static ScanSource ofPage(String name) {
        return switch (name == null ? "" : name) {
            case "wedge" -> WEDGE;
            case "camera" -> CAMERA;
            default -> TYPED;
        };
    }
}

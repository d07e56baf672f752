package brightseam.chamber;

/** In what argon comes. */
public enum ArgonForm {
    /** One cylinder of compressed gas. */
    CYLINDER,
    /** Several cylinders joined to one valve. */
    BUNDLE,
    /** A vacuum-jacketed vessel of liquid. */
    DEWAR;

    /** Whether it holds liquid, so that its level is read and not its pressure. */
    public boolean isLiquid() {
        return this == DEWAR;
    }

    /** The key of its type in the shared table of supplies. */
    public String supplyType() {
        return switch (this) {
            case CYLINDER -> "argon-cylinder";
            case BUNDLE -> "argon-bundle";
            case DEWAR -> "argon-dewar";
        };
    }
}

package brightseam.supply;

/** Where a supply is in its life. */
public enum Standing {
    /** As it was delivered. */
    UNOPENED,
    /** In use. */
    OPENED,
    /** Nothing of it is left. */
    USED_UP,
    /** Taken out of the shop for good. */
    RETIRED;

    /** Whether it can be used at all. */
    public boolean isUsable() {
        return this == UNOPENED || this == OPENED;
    }
}

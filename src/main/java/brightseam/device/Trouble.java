package brightseam.device;

/** What is wrong with a meter now. */
public enum Trouble {
    /** No reading ever came. */
    NEVER_HEARD(true),
    /** Readings are missing. */
    SILENT(true),
    /** The next typed reading is due. */
    OVERDUE(true),
    /** It has given the very same value for too long. */
    FROZEN(true),
    /** The last reading lies at an end of its range or beyond. */
    OUT_OF_RANGE(true),
    /** Its calibration is over. */
    UNCALIBRATED(true),
    /** The last reading came in too late. */
    LATE(true),
    /** The device's clock is far from the shop's; its readings are set right by the difference. */
    CLOCK_OFF(false);

    private final boolean stops;

    Trouble(boolean stops) {
        this.stops = stops;
    }

    /** Whether nothing may be decided on the meter while this lasts. */
    public boolean stopsUse() {
        return stops;
    }
}

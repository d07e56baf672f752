package brightseam.ui.chamber;

import brightseam.kernel.Moment;

/** When a press of the arc's switch counts. */
final class ArcPress {

    /** Longer on its way than this, in real time, and a start does not count; ours, generous for a slow network. */
    private static final long LATE_MILLIS = 3_000;

    private ArcPress() {}

    /**
     * Whether a press came too late to begin an arc.
     *
     * @param atElapsedMillis when it was pressed, on the shop's elapsed time line as the page knows it
     * @param speed shop seconds in a real second
     */
    static boolean isLate(long atElapsedMillis, Moment now, double speed) {
        return Math.abs(now.elapsedMillis() - atElapsedMillis) > LATE_MILLIS * speed;
    }
}

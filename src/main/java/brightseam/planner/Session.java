package brightseam.planner;

import brightseam.kernel.KitId;

/**
 * The chamber session that a kit is due for.
 *
 * @param kit the kit
 * @param startsSeconds when it starts
 * @param readyBeforeSeconds how long before the start every basket of the kit has to be ready
 * @param windowMarginSeconds how much of the clean window has to be left at the start
 */
public record Session(KitId kit, int startsSeconds, int readyBeforeSeconds, int windowMarginSeconds) {

    /** When every basket has to be ready. */
    public int dueSeconds() {
        return startsSeconds - readyBeforeSeconds;
    }
}

package brightseam.report;

import brightseam.procedure.Gap;
import java.time.Duration;

/**
 * The time between the end of one step and the start of the next, where the procedure limits it.
 *
 * @param from the step that ended, as number and title
 * @param limit the longest time allowed
 * @param used how long it was
 */
public record GapTaken(String from, Gap limit, Duration used) {

    /** Whether it was kept. */
    public boolean isWithin() {
        return used.compareTo(limit.maximum()) <= 0;
    }
}

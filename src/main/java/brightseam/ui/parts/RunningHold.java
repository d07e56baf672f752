package brightseam.ui.parts;

import brightseam.kernel.Moment;
import brightseam.procedure.Hold;
import java.util.Objects;

/**
 * A hold that runs, as the page needs it.
 *
 * @param label what is held, such as {@code Acid pickle}
 * @param startedAt when it started
 * @param now the server's moment of this telling; the page counts on from it
 * @param hold minimum and maximum
 * @param speed shop seconds in a real second
 * @param atMinimum what to do when the minimum is reached, such as {@code lift the basket and rinse.}
 * @param atMaximum what it means to go over the maximum, put the same way; unused where there is no maximum
 */
public record RunningHold(
        String label, Moment startedAt, Moment now, Hold hold, double speed, String atMinimum, String atMaximum) {

    /** Refuses missing parts and a speed that is not above zero. */
    public RunningHold {
        Objects.requireNonNull(startedAt, "startedAt");
        Objects.requireNonNull(now, "now");
        Objects.requireNonNull(hold, "hold");
        if (!(speed > 0)) {
            throw new IllegalArgumentException("a clock runs forward");
        }
    }
}

package brightseam.report;

import brightseam.kernel.Moment;
import brightseam.words.Explanation;
import java.util.List;

/**
 * Somebody tried something that a rule refuses.
 *
 * @param attempt what was tried
 * @param reasons one for each broken rule
 */
public record RefusedAttempt(Moment at, Who by, String tablet, String attempt, List<Explanation> reasons) {

    /** Copies the list. */
    public RefusedAttempt {
        reasons = List.copyOf(reasons);
    }
}

package brightseam.procedure;

import brightseam.kernel.Limits;
import brightseam.kernel.Syntax;

/**
 * Something that is read off and written down.
 *
 * @param id its name inside the step, such as {@code bath-temperature}
 * @param label what people call it
 * @param unit a key of the shared table of units, such as {@code degC}; {@code pass-fail} for a look that is 1 or 0
 * @param limits what is in order
 * @param decimals how many decimals the key pad offers
 * @param beforeHold true where it is read before the hold starts (a bath's temperature), false where after
 */
public record ReadingSpec(String id, String label, String unit, Limits limits, int decimals, boolean beforeHold) {

    /** The unit of a reading that is either in order (1) or not (0). */
    public static final String PASS_FAIL = "pass-fail";

    /** Checks the name and refuses more than four decimals. */
    public ReadingSpec {
        Syntax.slug("reading name", id);
        if (decimals < 0 || decimals > 4) {
            throw new IllegalArgumentException("decimals: 0 to 4");
        }
    }

    /** Whether the answer is yes or no. */
    public boolean isPassFail() {
        return unit.equals(PASS_FAIL);
    }
}

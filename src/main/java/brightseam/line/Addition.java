package brightseam.line;

import brightseam.kernel.Syntax;
import java.math.BigDecimal;
import java.util.List;

/**
 * Something added to a bath.
 *
 * @param addend what
 * @param litres how much
 * @param reason why, at most 200 characters
 * @param workings how the amount was found, line by line; empty where it was not computed
 */
public record Addition(Addend addend, BigDecimal litres, String reason, List<String> workings) {

    /** Refuses nothing or less, an empty or overlong reason and overlong workings. */
    public Addition {
        if (litres.signum() <= 0) {
            throw new IllegalArgumentException("litres: above zero");
        }
        reason = Syntax.text("reason", reason, 200);
        workings = Workings.checked(workings);
    }
}

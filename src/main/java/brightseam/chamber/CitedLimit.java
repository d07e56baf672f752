package brightseam.chamber;

import brightseam.kernel.Syntax;
import java.math.BigDecimal;

/**
 * A limit and where it comes from: published limits for a titanium chamber differ, so each says whose it is.
 *
 * @param value above zero, in the unit that the component's name says
 * @param source the standard, drawing or practice, at most 200 characters
 */
public record CitedLimit(BigDecimal value, String source) {

    /** Refuses a limit that is not above zero, and an empty or overlong source. */
    public CitedLimit {
        if (value.signum() <= 0) {
            throw new IllegalArgumentException("limit: above zero");
        }
        source = Syntax.text("source of the limit", source, 200);
    }
}

package brightseam.weld;

import brightseam.kernel.Syntax;
import java.time.Duration;

/**
 * How long a joint stays in the argon after its arc. Titanium takes up oxygen, nitrogen and hydrogen above 260 degrees
 * Celsius and is shielded until it is below 427 degrees (800 degrees Fahrenheit; a weld-engineering lecture of a
 * university that was read). The minutes that this takes for a joint are the shop's own, with their source.
 *
 * @param hold from the end of the arc
 * @param until to what temperature it is to cool, in words
 * @param source where the minutes come from
 */
public record Cooling(Duration hold, String until, String source) {

    /** The longest hold that a map admits. */
    public static final Duration HOLD_MAX = Duration.ofHours(4);

    /** The longest text. */
    public static final int TEXT_MAX = 80;

    /** Checks the texts; refuses a hold that is negative or above {@link #HOLD_MAX}. */
    public Cooling {
        until = Syntax.text("cooling until", until, TEXT_MAX);
        source = Syntax.text("cooling source", source, TEXT_MAX);
        if (hold.isNegative() || hold.compareTo(HOLD_MAX) > 0) {
            throw new IllegalArgumentException("cooling: 0 to " + HOLD_MAX.toMinutes() + " minutes");
        }
    }
}

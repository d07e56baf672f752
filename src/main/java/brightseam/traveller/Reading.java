package brightseam.traveller;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Moment;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * One value that was read off.
 *
 * @param id the reading's name in its step
 * @param value in the unit that the procedure gives; 1 or 0 for a look
 * @param inLimits whether it was in order
 * @param at when
 * @param by who read it
 * @param correction where it was corrected, the new value and why; {@code value} stays what was first written
 */
public record Reading(
        String id, BigDecimal value, boolean inLimits, Moment at, BadgeId by, Optional<Correction> correction) {

    /** What a reading was corrected to. */
    public record Correction(BigDecimal value, boolean inLimits, String reason, Moment at, BadgeId by) {}

    /** The value that counts: the corrected one where there is one. */
    public BigDecimal current() {
        return correction.map(Correction::value).orElse(value);
    }

    /** Whether the value that counts is in order. */
    public boolean currentInLimits() {
        return correction.map(Correction::inLimits).orElse(inLimits);
    }
}

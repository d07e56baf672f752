package brightseam.report;

import brightseam.kernel.Moment;
import brightseam.procedure.ReadingSpec;
import java.math.BigDecimal;
import java.util.List;

/**
 * One value that was read off, with everything that later became of it.
 *
 * @param spec what was to be read, and its limits
 * @param symbol the unit's symbol; empty for a look
 * @param value as first written
 * @param inLimits whether that was in order
 * @param by who read it
 * @param at when
 * @param repeated whether a later reading took its place
 * @param corrections what it was corrected to, oldest first
 */
public record ReadingLine(
        ReadingSpec spec,
        String symbol,
        BigDecimal value,
        boolean inLimits,
        Who by,
        Moment at,
        boolean repeated,
        List<Correction> corrections) {

    /**
     * A correction: the old value stays and is shown struck through.
     *
     * @param from what stood there
     * @param to what counts since
     * @param inLimits whether that is in order
     * @param reason why
     * @param mark by whom
     */
    public record Correction(BigDecimal from, BigDecimal to, boolean inLimits, String reason, Mark mark) {}

    /** Copies the list. */
    public ReadingLine {
        corrections = List.copyOf(corrections);
    }

    /** The value that counts. */
    public BigDecimal current() {
        return corrections.isEmpty() ? value : corrections.getLast().to();
    }

    /** Whether the value that counts is in order. */
    public boolean currentInLimits() {
        return corrections.isEmpty() ? inLimits : corrections.getLast().inLimits();
    }
}

package brightseam.line;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.SortedMap;

/**
 * One analysis as lists and trends show it.
 *
 * @param sample the sample's number
 * @param fill which filling of the tank
 * @param takenAt the wall time at which the sample was taken
 * @param enteredAt the wall time at which the analysis was signed
 * @param method how it was analysed
 * @param values what was found
 * @param outOfLimits what lay outside the limits of that time
 * @param workings burette readings and what followed from them
 * @param by who signed it
 */
public record SampleLine(
        String sample,
        int fill,
        Instant takenAt,
        Instant enteredAt,
        String method,
        SortedMap<BathQuantity, BigDecimal> values,
        List<BathQuantity> outOfLimits,
        List<String> workings,
        String by) {

    /** Whether everything lay inside the limits of that time. */
    public boolean inLimits() {
        return outOfLimits.isEmpty();
    }
}

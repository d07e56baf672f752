package brightseam.line;

import brightseam.kernel.Moment;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * An analysis of a bath.
 *
 * @param sample the sample's number, used once for a bath
 * @param takenAt when the sample was taken
 * @param method how it was analysed
 * @param values what was found, the acid ratio made from the acids
 * @param by the name of who signed it
 */
public record Analysis(
        String sample, Moment takenAt, String method, SortedMap<BathQuantity, BigDecimal> values, String by) {

    /** Copies the values. */
    public Analysis {
        values = Collections.unmodifiableSortedMap(new TreeMap<>(values));
    }
}

package brightseam.purge;

/**
 * What is believed of a chamber's leak before its curve is measured, such as from its last rise test.
 *
 * <p>A forecast can be given earlier with it, because early in a purge the curve itself tells little of a small leak.
 *
 * @param airLitresPerMinute the likeliest leak
 * @param plusMinusLitresPerMinute its standard deviation, above zero
 */
public record LeakExpected(double airLitresPerMinute, double plusMinusLitresPerMinute) {
    /** Refuses leaks below zero and certainty. */
    public LeakExpected {
        Quantity.notNegative("leak in L/min of air", airLitresPerMinute, 1e6);
        Quantity.positive("plus or minus in L/min of air", plusMinusLitresPerMinute, 1e6);
    }
}

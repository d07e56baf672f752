package brightseam.scan;

import java.util.List;

/** The check character of Code 128: start value plus position times value, modulo 103 (ISO/IEC 15417). */
public final class Code128Check {

    private static final int MODULUS = 103;

    private Code128Check() {}

    /**
     * The check value.
     *
     * @param values the symbol's values from the start character (103, 104 or 105) to the last character of data
     */
    public static int of(List<Integer> values) {
        long sum = values.getFirst();
        for (int position = 1; position < values.size(); position++) {
            sum += (long) position * values.get(position);
        }
        return (int) (sum % MODULUS);
    }
}

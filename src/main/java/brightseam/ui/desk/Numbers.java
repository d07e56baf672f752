package brightseam.ui.desk;

import java.math.BigDecimal;
import java.util.Optional;

/** Numbers as people key them into a form, with point or comma. */
public final class Numbers {

    private Numbers() {}

    /**
     * The number in {@code text}.
     *
     * @throws IllegalArgumentException naming {@code label} where there is none
     */
    public static BigDecimal decimal(String label, String text) {
        return optional(label, text).orElseThrow(() -> new IllegalArgumentException(label + ": enter a number"));
    }

    /** The number in {@code text}; empty where nothing was keyed. Refuses what is no number. */
    public static Optional<BigDecimal> optional(String label, String text) {
        String keyed = text.strip().replace(',', '.').replace('−', '-');
        if (keyed.isEmpty()) {
            return Optional.empty();
        }
        if (!keyed.matches("-?\\d{1,9}(\\.\\d{1,6})?")) {
            throw new IllegalArgumentException(label + ": a number such as 12.5, not " + text.strip());
        }
        return Optional.of(new BigDecimal(keyed));
    }

    /** The whole number in {@code text}. Refuses anything else. */
    public static int whole(String label, String text) {
        try {
            return decimal(label, text).intValueExact();
        } catch (ArithmeticException broken) {
            throw new IllegalArgumentException(label + ": a whole number, not " + text.strip());
        }
    }
}

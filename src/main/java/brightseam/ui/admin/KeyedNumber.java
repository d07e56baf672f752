package brightseam.ui.admin;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** Numbers with a decimal point as people key them in, whatever the browser's language. */
final class KeyedNumber {

    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,8}(\\.[0-9]{1,6})?");

    private KeyedNumber() {}

    /**
     * The number in {@code text}.
     *
     * @throws IllegalArgumentException naming {@code what} where it is none, or below zero
     */
    static BigDecimal read(String what, String text) {
        if (!NUMBER.matcher(text.strip()).matches()) {
            throw new IllegalArgumentException(what + ": a number such as 38.1, with a point");
        }
        return new BigDecimal(text.strip());
    }

    /** The same; empty for an empty text. */
    static Optional<BigDecimal> readIfAny(String what, String text) {
        return text.isBlank() ? Optional.empty() : Optional.of(read(what, text));
    }
}

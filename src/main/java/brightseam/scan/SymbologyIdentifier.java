package brightseam.scan;

import java.util.Optional;
import java.util.Set;

/**
 * The three characters that a scanner can put before the data: {@code ]}, a letter for the symbology and a modifier
 * (ISO/IEC 15424, from memory).
 *
 * @param code the symbology: {@code C} Code 128, {@code A} Code 39, {@code d} Data Matrix, {@code Q} QR
 * @param modifier what the symbol said of its data
 */
public record SymbologyIdentifier(char code, char modifier) {

    /** GS1-128, GS1 DataBar, GS1 Data Matrix and GS1 QR: the data are GS1 element strings (from memory). */
    private static final Set<String> GS1 = Set.of("]C1", "]e0", "]d2", "]Q3");

    private static final int LENGTH = 3;

    /** The identifier at the start of {@code text}, where there is one. */
    public static Optional<SymbologyIdentifier> leading(String text) {
        boolean present = text.length() >= LENGTH && text.charAt(0) == ']'
                && isLetter(text.charAt(1)) && isLetterOrDigit(text.charAt(2));
        return present ? Optional.of(new SymbologyIdentifier(text.charAt(1), text.charAt(2))) : Optional.empty();
    }

    /** {@code text} without the identifier that {@link #leading} finds. */
    static String strip(String text) {
        return leading(text).isPresent() ? text.substring(LENGTH) : text;
    }

    /** Whether the symbol itself says that its data are GS1 element strings. */
    public boolean marksElementStrings() {
        return GS1.contains(toString());
    }

    @Override
    public String toString() {
        return "]" + code + modifier;
    }

    private static boolean isLetter(char c) {
        return c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z';
    }

    private static boolean isLetterOrDigit(char c) {
        return isLetter(c) || c >= '0' && c <= '9';
    }
}

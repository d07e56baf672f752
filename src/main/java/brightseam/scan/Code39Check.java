package brightseam.scan;

import java.util.Optional;

/** The optional check character of Code 39: the sum of the characters' values modulo 43 (ISO/IEC 16388). */
public final class Code39Check {

    private static final String ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ-. $/+%";

    private Code39Check() {}

    /** The character for {@code text}; empty where {@code text} holds a character that Code 39 has not. */
    public static Optional<Character> of(String text) {
        int sum = 0;
        for (char c : text.toCharArray()) {
            int value = ALPHABET.indexOf(c);
            if (value < 0) {
                return Optional.empty();
            }
            sum += value;
        }
        return Optional.of(ALPHABET.charAt(sum % ALPHABET.length()));
    }
}

package brightseam.scan;

import java.util.Optional;

/**
 * The check character on our own labels: ISO/IEC 7064 MOD 37-2, over capitals and digits, answering one of
 * {@code 0-9 A-Z *}. It finds every single wrong character and every swap of two neighbours (where a point is one of
 * them, 36 in 37).
 *
 * <p>Identities also hold hyphens and points, which the standard's alphabet does not: a hyphen counts as 36 and a
 * point, which split lots have, as 36 twice. That is ours; texts without them get the standard's character.
 */
public final class CheckCharacter {

    private static final String ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*";
    private static final int MODULUS = 37;
    private static final int RADIX = 2;
    private static final int HYPHEN = 36;

    private CheckCharacter() {}

    /** The character for {@code text}; empty where it holds anything but capitals, digits, hyphens and points. */
    public static Optional<Character> of(String text) {
        int sum = 0;
        for (char c : text.toCharArray()) {
            switch (c) {
                case '-' -> sum = next(sum, HYPHEN);
                case '.' -> sum = next(next(sum, HYPHEN), HYPHEN);
                default -> {
                    int value = ALPHABET.indexOf(c);
                    if (value < 0 || c == '*') {
                        return Optional.empty();
                    }
                    sum = next(sum, value);
                }
            }
        }
        return Optional.of(ALPHABET.charAt(Math.floorMod(1 - sum, MODULUS)));
    }

    /** Whether {@code check} is the character for {@code text}. */
    public static boolean fits(String text, char check) {
        return of(text).filter(c -> c == check).isPresent();
    }

    private static int next(int sum, int value) {
        return (sum + value) * RADIX % MODULUS;
    }
}

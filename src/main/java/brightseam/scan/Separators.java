package brightseam.scan;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The separators of structured data, and what a badly set-up scanner sends in their place.
 *
 * @param substitutes what arrives, and the separator that it stands for; the longest is replaced first
 */
public record Separators(Map<String, Character> substitutes) {

    /** Group separator, ASCII 29: ends a field. FNC1 inside a GS1 symbol is transmitted as this. */
    public static final char GS = 0x1D;
    /** Record separator, ASCII 30: ends a format of ISO/IEC 15434. */
    public static final char RS = 0x1E;
    /** End of transmission, ASCII 4: ends an envelope of ISO/IEC 15434. */
    public static final char EOT = 0x04;

    private static final int SUBSTITUTE_LENGTH_MAX = 8;

    /** Refuses an empty or overlong substitute and a stand-in for anything but a separator. */
    public Separators {
        substitutes = Map.copyOf(substitutes);
        substitutes.forEach((text, separator) -> {
            if (text.isEmpty() || text.length() > SUBSTITUTE_LENGTH_MAX) {
                throw new IllegalArgumentException("substitute: 1 to 8 characters");
            }
            if (separator != GS && separator != RS && separator != EOT) {
                throw new IllegalArgumentException("a substitute stands for GS, RS or EOT");
            }
        });
    }

    /** The control pictures of Unicode (U+241D, U+241E, U+2404), which some scanners and browsers send. */
    public static Separators standard() {
        return new Separators(Map.of("\u241D", GS, "\u241E", RS, "\u2404", EOT));
    }

    /** These and {@code text} for {@code separator}, as a scanner's set-up demands, such as {@code ^]} for GS. */
    public Separators with(String text, char separator) {
        Map<String, Character> more = new LinkedHashMap<>(substitutes);
        more.put(text, separator);
        return new Separators(more);
    }

    /** {@code text} with every substitute replaced, the longest substitute first. */
    String restore(String text) {
        String restored = text;
        for (String substitute : longestFirst()) {
            restored = restored.replace(substitute, String.valueOf(substitutes.get(substitute)));
        }
        return restored;
    }

    private Iterable<String> longestFirst() {
        return substitutes.keySet().stream()
                .sorted((a, b) -> a.length() != b.length() ? b.length() - a.length() : a.compareTo(b))
                .toList();
    }
}

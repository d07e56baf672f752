package brightseam.evidence;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;

/**
 * The canonical form of RFC 8785 of the values that a file of evidence has: objects, arrays, texts, whole numbers.
 * Names are sorted by their UTF-16 units (section 3.2.3), which is how Java compares strings.
 */
final class CanonicalText {

    private static final String SHORT_ESCAPED = "\b\t\n\f\r\"\\";
    private static final String SHORT_ESCAPES = "btnfr\"\\";

    private final StringBuilder out = new StringBuilder();

    private CanonicalText() {}

    /** An object of {@code members}: maps, lists, strings and longs, to any depth. */
    static String of(Map<String, Object> members) {
        CanonicalText text = new CanonicalText();
        text.write(members);
        return text.out.toString();
    }

    private void write(Object value) {
        switch (value) {
            case Map<?, ?> members -> all('{', '}', new TreeMap<>(members).entrySet(), this::member);
            case List<?> values -> all('[', ']', values, this::write);
            case String text -> string(text);
            case Long number -> out.append((long) number);
            default -> throw new IllegalArgumentException("no form for " + value.getClass());
        }
    }

    private void member(Map.Entry<?, ?> member) {
        string((String) member.getKey());
        out.append(':');
        write(member.getValue());
    }

    private <T> void all(char begin, char end, Iterable<T> parts, Consumer<T> writer) {
        out.append(begin);
        boolean first = true;
        for (T part : parts) {
            if (!first) {
                out.append(',');
            }
            first = false;
            writer.accept(part);
        }
        out.append(end);
    }

    private void string(String text) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char next = text.charAt(i);
            int known = SHORT_ESCAPED.indexOf(next);
            if (known >= 0) {
                out.append('\\').append(SHORT_ESCAPES.charAt(known));
            } else if (next < ' ') {
                out.append(String.format("\\u%04x", (int) next));
            } else {
                out.append(next);
            }
        }
        out.append('"');
    }
}

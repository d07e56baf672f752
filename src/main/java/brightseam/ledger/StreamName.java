package brightseam.ledger;

import java.util.regex.Pattern;

/**
 * Names one chain of entries, such as {@code traveller/T-1042}.
 *
 * @param value a lower-case family, a slash and an identity
 */
public record StreamName(String value) implements Comparable<StreamName> {

    private static final Pattern FORM = Pattern.compile("[a-z-]{1,30}/[A-Z0-9.-]{1,48}");

    /** Refuses anything but family, slash, identity within 80 characters. */
    public StreamName {
        if (!isName(value)) {
            throw new IllegalArgumentException("stream name: family/IDENTITY, not " + value);
        }
    }

    /** The stream of {@code identity} in {@code family}. */
    public static StreamName of(String family, Object identity) {
        return new StreamName(family + "/" + identity);
    }

    /** Whether {@code text} has the form of a stream's name. */
    public static boolean isName(String text) {
        return text != null && FORM.matcher(text).matches();
    }

    /** The part before the slash. */
    public String family() {
        return value.substring(0, value.indexOf('/'));
    }

    /** The part behind the slash. */
    public String identity() {
        return value.substring(value.indexOf('/') + 1);
    }

    @Override
    public int compareTo(StreamName other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}

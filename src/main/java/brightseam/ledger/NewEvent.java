package brightseam.ledger;

import java.util.Objects;
import java.util.regex.Pattern;

/**
 * An event before it is an entry.
 *
 * @param type its name from the owner's explicit table, such as {@code step-signed.1}
 * @param json one JSON object; the ledger stores its canonical form (RFC 8785)
 */
public record NewEvent(String type, String json) {

    private static final Pattern TYPE = Pattern.compile("[a-z0-9][a-z0-9.-]{0,79}");

    /** Refuses a type name with anything but lower-case letters, digits, points and hyphens, at most 80. */
    public NewEvent {
        if (!isType(type)) {
            throw new IllegalArgumentException("event type name: lower case, digits, points, hyphens, not " + type);
        }
        Objects.requireNonNull(json, "json");
    }

    /** Whether {@code name} has the form of a type name. */
    public static boolean isType(String name) {
        return name != null && TYPE.matcher(name).matches();
    }
}

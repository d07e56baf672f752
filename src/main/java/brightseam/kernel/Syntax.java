package brightseam.kernel;

import java.util.regex.Pattern;

/** The checks that identities and texts share: size, then characters, then form. */
public final class Syntax {

    private static final Pattern IDENTITY = Pattern.compile("[A-Z0-9]+([-.][A-Z0-9]+)*");
    private static final Pattern SLUG = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    private static final int IDENTITY_LENGTH_MAX = 24;

    private Syntax() {}

    /**
     * Returns {@code value} where it is an identity: 1 to 24 capitals and digits in groups parted by hyphen or point.
     *
     * @throws IllegalArgumentException naming {@code what} otherwise
     */
    public static String identity(String what, String value) {
        return matching(what, value, IDENTITY, IDENTITY_LENGTH_MAX, "capitals, digits, hyphens and points");
    }

    /**
     * Returns {@code value} where it is a slug: lower-case words parted by hyphens, at most 40 characters.
     *
     * @throws IllegalArgumentException naming {@code what} otherwise
     */
    public static String slug(String what, String value) {
        return matching(what, value, SLUG, 40, "lower-case words parted by hyphens");
    }

    /**
     * Returns {@code value} stripped, where it has 1 to {@code lengthMax} characters and none is a control character.
     *
     * @throws IllegalArgumentException naming {@code what} otherwise
     */
    public static String text(String what, String value, int lengthMax) {
        String stripped = value == null ? "" : value.strip();
        if (stripped.isEmpty() || stripped.length() > lengthMax) {
            throw new IllegalArgumentException(what + ": between 1 and " + lengthMax + " characters");
        }
        if (stripped.chars().anyMatch(c -> Character.isISOControl(c) && c != '\n')) {
            throw new IllegalArgumentException(what + ": no control characters");
        }
        return stripped;
    }

    private static String matching(String what, String value, Pattern pattern, int lengthMax, String form) {
        if (value == null || value.isEmpty() || value.length() > lengthMax) {
            throw new IllegalArgumentException(what + ": between 1 and " + lengthMax + " characters");
        }
        if (!pattern.matcher(value).matches()) {
            throw new IllegalArgumentException(what + ": " + form + " only");
        }
        return value;
    }
}

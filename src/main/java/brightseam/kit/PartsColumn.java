package brightseam.kit;

import brightseam.kernel.Syntax;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The columns of a parts list, and what each admits.
 *
 * <p>No column admits a text that a spreadsheet program would run as a formula (one that begins with =, +, - or @:
 * the OWASP page on CSV injection, from memory), nor characters that cannot be seen.
 */
public enum PartsColumn {
    /** The part's number on the drawing. */
    PART_NUMBER("capitals and digits in groups parted by hyphen or point, 1 to 24 characters", false),
    /** What people call the part. */
    DESCRIPTION("1 to 80 visible characters in one line, the first none of = + - @", false),
    /** The drawing's revision; a lone hyphen is the first issue (common practice). */
    DRAWING_REVISION("1 to 4 capitals and digits, or a lone hyphen", false),
    /** How many pieces, as one lot. */
    QUANTITY("a whole number of pieces from 1 to 9999", false),
    /** Which procedure the lot follows. */
    PROCEDURE("a procedure's name: capitals, digits, hyphens and points, 1 to 24 characters", false),
    /** Which heat it is made of; may be left empty until release. */
    HEAT("a heat's label: capitals, digits, hyphens and points, 1 to 24 characters, or empty", true);

    private static final Pattern REVISION = Pattern.compile("-|[A-Z0-9]{1,4}");
    private static final Pattern COUNT = Pattern.compile("[1-9][0-9]{0,3}");
    private static final int DESCRIPTION_LENGTH_MAX = 80;

    private final String expected;
    private final boolean mayBeEmpty;

    PartsColumn(String expected, boolean mayBeEmpty) {
        this.expected = expected;
        this.mayBeEmpty = mayBeEmpty;
    }

    /** Its name in the first line of a list, such as {@code part_number}. */
    public String header() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What it admits, in words. */
    public String expected() {
        return expected;
    }

    /** Whether it admits {@code text}, which has no white space around it. */
    public boolean admits(String text) {
        if (text.isEmpty()) {
            return mayBeEmpty;
        }
        return switch (this) {
            case PART_NUMBER, PROCEDURE, HEAT -> isIdentity(text);
            case DESCRIPTION -> isDescription(text);
            case DRAWING_REVISION -> REVISION.matcher(text).matches();
            case QUANTITY -> COUNT.matcher(text).matches();
        };
    }

    /** The column with {@code header}, in any case. */
    static Optional<PartsColumn> named(String header) {
        return Arrays.stream(values())
                .filter(column -> column.header().equalsIgnoreCase(header))
                .findFirst();
    }

    /** Returns {@code text} where the column admits it, stripped. */
    String require(String text) {
        String stripped = text.strip();
        if (!admits(stripped)) {
            throw new IllegalArgumentException(header() + ": " + expected);
        }
        return stripped;
    }

    private static boolean isIdentity(String text) {
        try {
            Syntax.identity("label", text);
            return true;
        } catch (IllegalArgumentException refused) {
            return false;
        }
    }

    private static boolean isDescription(String text) {
        return text.length() <= DESCRIPTION_LENGTH_MAX
                && !Visible.beginsFormula(text)
                && text.codePoints().allMatch(Visible::isVisible);
    }
}

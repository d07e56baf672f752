package brightseam.weld;

import brightseam.kernel.Syntax;
import brightseam.kit.Visible;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The columns of a list of joints, and what each admits. No column admits a text that a spreadsheet program would run
 * as a formula, nor characters that cannot be seen.
 */
public enum MapColumn {
    /** The joint's number on the map. */
    JOINT("capitals and digits, 1 to 6 characters, such as J03"),
    /** What people call it. */
    DESCRIPTION("1 to 80 visible characters in one line, the first none of = + - @"),
    /** How much rests on it. */
    CLASS("A, B or C"),
    /** The pieces that it holds. */
    PARTS("two or more pieces, each once, as line/piece parted by spaces, such as 1/1 4/2"),
    /** What keeps air from its back side. */
    BACK_SIDE("purged, vented or open"),
    /** Why the back side may stay open. */
    BACK_SIDE_REASON("where the back side is open: why, in 1 to 80 visible characters; else empty"),
    /** What is added. */
    FILLER("a filler class such as ERTi-9, or empty where none is added"),
    /** How long it stays in the argon after the arc. */
    COOLING_MINUTES("minutes from 0 to 240, with at most one decimal"),
    /** To what temperature it is to cool. */
    COOLING_UNTIL("what it is to cool to, in 1 to 80 visible characters"),
    /** Where the minutes come from. */
    COOLING_SOURCE("where the minutes come from, in 1 to 80 visible characters"),
    /** By which table its colour is judged. */
    ACCEPTANCE("the key of a table of colours: lower-case words parted by hyphens"),
    /** Where it lies on the picture. */
    X("thousandths of the picture's width from its left edge, 0 to 1000, or empty"),
    /** Where it lies on the picture. */
    Y("thousandths of the picture's height from its upper edge, 0 to 1000, or empty");

    private static final Pattern NUMBER = Pattern.compile("[A-Z0-9]{1,6}");
    private static final String PIECE = "[1-9]\\d{0,2}/[1-9]\\d{0,3}";
    private static final Pattern PIECES = Pattern.compile(PIECE + "( +" + PIECE + ")+");
    private static final Pattern MINUTES = Pattern.compile("(\\d{1,2}|1\\d\\d|2[0-3]\\d)([.,]\\d)?|240");
    private static final Pattern SLUG = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    private static final Pattern THOUSANDTHS = Pattern.compile("\\d{1,3}|1000");

    private final String expected;

    MapColumn(String expected) {
        this.expected = expected;
    }

    /** Its name in the first line of a list, such as {@code back_side}. */
    public String header() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What it admits, in words. */
    public String expected() {
        return expected;
    }

    /** Whether it admits {@code text}, which has no white space around it. */
    public boolean admits(String text) {
        return switch (this) {
            case JOINT -> NUMBER.matcher(text).matches();
            case DESCRIPTION, COOLING_UNTIL, COOLING_SOURCE -> isText(text);
            case CLASS -> Pattern.matches("[A-C]", text);
            case PARTS -> PIECES.matcher(text).matches() && eachOnce(text);
            case BACK_SIDE -> Pattern.matches("purged|vented|open", text);
            case BACK_SIDE_REASON -> text.isEmpty() || isText(text);
            case FILLER -> text.isEmpty() || FillerClass.printed(text).isPresent();
            case COOLING_MINUTES -> MINUTES.matcher(text).matches();
            case ACCEPTANCE -> SLUG.matcher(text).matches() && text.length() <= 40;
            case X, Y -> text.isEmpty() || THOUSANDTHS.matcher(text).matches();
        };
    }

    /** The column with {@code header}, in any case. */
    static Optional<MapColumn> named(String header) {
        return Arrays.stream(values()).filter(column -> column.header().equalsIgnoreCase(header)).findFirst();
    }

    /** The pieces that {@code text} names, which the column of pieces admits. */
    static List<JointPart> parts(String text) {
        return Arrays.stream(text.split(" +")).map(piece -> {
            int slash = piece.indexOf('/');
            return new JointPart(Integer.parseInt(piece.substring(0, slash)),
                    Integer.parseInt(piece.substring(slash + 1)));
        }).toList();
    }

    private static boolean eachOnce(String text) {
        return Arrays.stream(text.split(" +")).distinct().count() == text.split(" +").length;
    }

    private static boolean isText(String text) {
        try {
            Syntax.text("text", text, MapJoint.TEXT_MAX);
        } catch (IllegalArgumentException refused) {
            return false;
        }
        return !Visible.beginsFormula(text) && text.codePoints().allMatch(Visible::isVisible);
    }
}

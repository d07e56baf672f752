package brightseam.kit;

/** What can be shown, and sent back out in a list, without doing something by itself. */
public final class Visible {

    private static final int SHOWN_MAX = 60;

    private Visible() {}

    /** Whether a spreadsheet program would take {@code text} for a formula. */
    public static boolean beginsFormula(String text) {
        return !text.isEmpty() && "=+-@".indexOf(text.charAt(0)) >= 0;
    }

    /** Whether the character can be seen and leaves the others where they are. */
    public static boolean isVisible(int codePoint) {
        return codePoint != '\uFFFD'
                && switch (Character.getType(codePoint)) {
                    case Character.CONTROL,
                            Character.FORMAT,
                            Character.SURROGATE,
                            Character.PRIVATE_USE,
                            Character.UNASSIGNED,
                            Character.LINE_SEPARATOR,
                            Character.PARAGRAPH_SEPARATOR -> false;
                    default -> true;
                };
    }

    /** {@code text} for a report: shortened, a point for what cannot be seen, an apostrophe before a formula. */
    public static String shown(String text) {
        StringBuilder shown = new StringBuilder(beginsFormula(text) ? "'" : "");
        text.codePoints().limit(SHOWN_MAX).forEach(c -> shown.appendCodePoint(isVisible(c) ? c : '\u00B7'));
        return text.codePointCount(0, text.length()) > SHOWN_MAX ? shown.append('\u2026').toString() : shown.toString();
    }
}

package brightseam.words;

import java.util.regex.Pattern;

/**
 * One cell of comma-separated text (RFC 4180) that no spreadsheet program runs as a formula.
 *
 * <p>A sign that begins a formula ({@code = + - @} and their full-width forms) gets an apostrophe before it where it
 * begins the cell or follows a separator, a quote or a line break inside it: a program that parts lines at another
 * separator than ours would begin a cell there (OWASP, "CSV Injection", from memory). A cell that is nothing but a
 * number is left as it is.
 */
public final class CsvCell {

    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,30}(\\.\\d{1,30})?");
    private static final Pattern BEGINS_FORMULA = Pattern.compile("(^|[,;\\t\\r\\n\"'|])(\\s*)(?=[=+@＝＋－＠-])");
    private static final Pattern BEGINS_WITH_CONTROL = Pattern.compile("^(?=[\\t\\r\\n])");

    private CsvCell() {}

    /** {@code text} made harmless, in quotes where it has to be. */
    public static String of(String text) {
        return quoted(harmless(text));
    }

    /** {@code text} as it is, in quotes where it has to be: for what is hashed, which may not change. */
    public static String exactly(String text) {
        return quoted(text);
    }

    private static String harmless(String text) {
        return NUMBER.matcher(text).matches() ? text
                : BEGINS_WITH_CONTROL.matcher(BEGINS_FORMULA.matcher(text).replaceAll("$1$2'")).replaceFirst("'");
    }

    private static String quoted(String text) {
        boolean plain = text.chars().noneMatch(c -> c == '"' || c == ',' || c == ';' || c == '\t' || c == '\n'
                || c == '\r');
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}

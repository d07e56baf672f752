package brightseam.ui.desk;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Lists as comma-separated text (RFC 4180). No cell can be run as a formula by a spreadsheet program: one that begins
 * with {@code = + - @}, a tab or a line break gets an apostrophe before it (the OWASP page on CSV injection, from
 * memory).
 */
public final class Csv {

    private static final String RUNS_AS_FORMULA = "=+-@\t\r\n";

    private Csv() {}

    /** The text of {@code rows} under {@code header}, lines ended by CR LF. */
    public static String write(List<String> header, List<List<String>> rows) {
        return Stream.concat(Stream.of(header), rows.stream())
                .map(row -> row.stream().map(Csv::cell).collect(Collectors.joining(",")) + "\r\n")
                .collect(Collectors.joining());
    }

    private static String cell(String text) {
        String harmless = text.isEmpty() || RUNS_AS_FORMULA.indexOf(text.charAt(0)) < 0 ? text : "'" + text;
        boolean plain = harmless.chars().noneMatch(c -> c == '"' || c == ',' || c == ';' || c == '\n' || c == '\r');
        return plain ? harmless : '"' + harmless.replace("\"", "\"\"") + '"';
    }
}

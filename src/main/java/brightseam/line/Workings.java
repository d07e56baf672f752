package brightseam.line;

import brightseam.kernel.Syntax;
import java.util.List;

/** The form of a calculation that is kept as evidence: a few lines of text. */
final class Workings {

    private static final int LINES_MAX = 40;
    private static final int LINE_LENGTH_MAX = 300;

    private Workings() {}

    static List<String> checked(List<String> lines) {
        if (lines.size() > LINES_MAX) {
            throw new IllegalArgumentException("workings: at most " + LINES_MAX + " lines");
        }
        return lines.stream().map(line -> Syntax.text("workings", line, LINE_LENGTH_MAX)).toList();
    }
}

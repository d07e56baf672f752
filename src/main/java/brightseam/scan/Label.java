package brightseam.scan;

import brightseam.kernel.Syntax;
import java.util.List;
import java.util.Objects;

/**
 * What is printed on a label.
 *
 * @param own which of our labels
 * @param title in large letters, such as {@code CLEAN BIN}; 1 to 40 characters
 * @param lines below it, at most four of 1 to 60 characters
 * @param demo whether it belongs to a demo shop and is marked so
 */
public record Label(OwnLabel own, String title, List<String> lines, boolean demo) {

    private static final int LINES_MAX = 4;

    /** Checks the texts' lengths and characters. */
    public Label {
        Objects.requireNonNull(own, "own");
        title = Syntax.text("title", title, 40);
        lines = lines.stream().map(line -> Syntax.text("line", line, 60)).toList();
        if (lines.size() > LINES_MAX) {
            throw new IllegalArgumentException("at most " + LINES_MAX + " lines");
        }
    }
}

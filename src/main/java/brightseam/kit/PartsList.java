package brightseam.kit;

import java.util.List;

/**
 * A parts list, as read: all of its lines, or everything that is wrong with it.
 *
 * <p>A list is comma- or semicolon-separated text with the column names of {@link PartsColumn} in its first line, in
 * any order. Of a list with a problem nothing is used.
 */
public sealed interface PartsList {

    /** The most lines that a list may have. */
    int LINES_MAX = 200;

    /** The most characters that a list may have. */
    int CHARACTERS_MAX = 262_144;

    /** The most problems that are told; the first ones. */
    int PROBLEMS_MAX = 100;

    /** Every line of it can be used. */
    record Accepted(List<KitLine> lines) implements PartsList {
        /** Copies the list. */
        public Accepted {
            lines = List.copyOf(lines);
        }
    }

    /** Nothing of it can be used, for these reasons: at least one. */
    record Rejected(List<ListProblem> problems) implements PartsList {
        /** Copies the first {@link #PROBLEMS_MAX} problems; refuses none. */
        public Rejected {
            problems = List.copyOf(problems.subList(0, Math.min(problems.size(), PROBLEMS_MAX)));
            if (problems.isEmpty()) {
                throw new IllegalArgumentException("a list is rejected for a reason");
            }
        }
    }

    /** Reads {@code csv}, whatever it holds; numbers the lines from 1. Never throws. */
    static PartsList parse(String csv) {
        return parse(csv, 1);
    }

    /** Reads {@code csv}, whatever it holds; numbers the lines from {@code firstNumber}. */
    static PartsList parse(String csv, int firstNumber) {
        return PartsListReader.read(csv, firstNumber);
    }

    /** The list with these lines, as {@link #parse} reads it: commas, CR LF, quotes where RFC 4180 asks for them. */
    static String write(List<KitLine> lines) {
        return PartsListWriter.write(lines);
    }
}

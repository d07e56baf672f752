package brightseam.weld;

import brightseam.kit.ListProblem;
import java.util.List;

/**
 * A list of joints, as read: all of its lines, or everything that is wrong with it. It is comma- or
 * semicolon-separated text with the column names of {@link MapColumn} in its first line, in any order. Of a list with a
 * problem nothing is used.
 */
public sealed interface MapList {

    /** The most characters that a list may have. */
    int CHARACTERS_MAX = 262_144;

    /** The most problems that are told; the first ones. */
    int PROBLEMS_MAX = 100;

    /** Every line of it can be used. */
    record Accepted(List<MapJoint> joints) implements MapList {
        /** Copies the list. */
        public Accepted {
            joints = List.copyOf(joints);
        }
    }

    /** Nothing of it can be used, for these reasons: at least one. */
    record Rejected(List<ListProblem> problems) implements MapList {
        /** Copies the first {@link #PROBLEMS_MAX} problems; refuses none. */
        public Rejected {
            problems = List.copyOf(problems.subList(0, Math.min(problems.size(), PROBLEMS_MAX)));
            if (problems.isEmpty()) {
                throw new IllegalArgumentException("a list is rejected for a reason");
            }
        }
    }

    /** Reads {@code csv}, whatever it holds. Never throws. */
    static MapList parse(String csv) {
        return MapListReader.read(csv);
    }

    /** The list with these joints, as {@link #parse} reads it: commas, CR LF, quotes where RFC 4180 asks for them. */
    static String write(List<MapJoint> joints) {
        return MapListWriter.write(joints);
    }
}

package brightseam.scan;

import java.util.List;

/** The fields of a structured text, or why there are none. */
sealed interface Fields {

    /** Everything checked out. */
    record Found(List<Field> fields) implements Fields {}

    /** The first thing that did not. */
    record Failed(UnreadableReason reason) implements Fields {}
}

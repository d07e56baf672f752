package brightseam.kit;

import brightseam.kernel.KitId;
import brightseam.kernel.Refusal;
import java.util.List;

/** The rules that stand against a {@link KitCommand}. */
public sealed interface KitRefusal extends Refusal {

    /** Which kit. */
    KitId kit();

    @Override
    default String code() {
        return switch (this) {
            case KitUnknown ignored -> "kit-unknown";
            case KitAlreadyOpened ignored -> "kit-already-opened";
            case KitClosed ignored -> "kit-closed";
            case LineNumbersTaken ignored -> "kit-line-numbers-taken";
            case TooManyLines ignored -> "kit-too-many-lines";
            case NeedTwice ignored -> "kit-need-twice";
        };
    }

    /** No such kit was ever opened. */
    record KitUnknown(KitId kit) implements KitRefusal {}

    /** The label is in use already, for the kit called {@code title}. */
    record KitAlreadyOpened(KitId kit, String title) implements KitRefusal {}

    /** It no longer changes. */
    record KitClosed(KitId kit) implements KitRefusal {}

    /** These numbers are in the kit already, or twice among the new lines. */
    record LineNumbersTaken(KitId kit, List<Integer> lineNumbers) implements KitRefusal {
        /** Copies the list. */
        public LineNumbersTaken {
            lineNumbers = List.copyOf(lineNumbers);
        }
    }

    /** These types are named twice among what the session needs. */
    record NeedTwice(KitId kit, List<String> types) implements KitRefusal {
        /** Copies the list. */
        public NeedTwice {
            types = List.copyOf(types);
        }
    }

    /** It would have more lines than a kit may have. */
    record TooManyLines(KitId kit, int lines, int linesMax) implements KitRefusal {}
}

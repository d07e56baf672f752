package brightseam.weld;

import java.util.List;

/** What a table says of the colours that were seen. */
public sealed interface ColourVerdict {

    /** Every colour may stay. */
    record Accept() implements ColourVerdict {}

    /** They may stay where what {@code next} names holds. */
    record Conditional(List<String> colours, List<String> next) implements ColourVerdict {
        /** Copies the lists. */
        public Conditional {
            colours = List.copyOf(colours);
            next = List.copyOf(next);
        }
    }

    /** They may not stay; {@code next} says what has to be done. */
    record Reject(List<String> colours, List<String> next) implements ColourVerdict {
        /** Copies the lists. */
        public Reject {
            colours = List.copyOf(colours);
            next = List.copyOf(next);
        }
    }

    /** The same as one word. */
    default Ruling ruling() {
        return switch (this) {
            case Accept ignored -> Ruling.ACCEPT;
            case Conditional ignored -> Ruling.CONDITIONAL;
            case Reject ignored -> Ruling.REJECT;
        };
    }
}

package brightseam.kernel;

import java.util.List;

/**
 * What a decider answers: the events that follow from a command, or every rule that it breaks.
 *
 * @param <E> the feature's own event type
 */
public sealed interface Decision<E> {

    /** The command stands and these events follow, in order. An empty list means: nothing changed. */
    record Accepted<E>(List<E> events) implements Decision<E> {
        /** Copies the list. */
        public Accepted {
            events = List.copyOf(events);
        }
    }

    /** The command is refused; every broken rule is named, at least one. */
    record Refused<E>(List<Refusal> refusals) implements Decision<E> {
        /** Copies the list and refuses an empty one. */
        public Refused {
            refusals = List.copyOf(refusals);
            if (refusals.isEmpty()) {
                throw new IllegalArgumentException("a refusal names at least one rule");
            }
        }
    }

    /** Accepts with {@code events}. */
    static <E> Decision<E> accepted(List<? extends E> events) {
        return new Accepted<>(List.<E>copyOf(events));
    }

    /** Refuses for {@code refusals}. */
    static <E> Decision<E> refused(List<? extends Refusal> refusals) {
        return new Refused<>(List.<Refusal>copyOf(refusals));
    }
}

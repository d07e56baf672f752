package brightseam.ledger;

import brightseam.kernel.Refusal;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/**
 * What would be stored, before it is: the parts of one atomic append, or every rule that stands against it.
 *
 * <p>A service joins its own part with another's through {@link #with}, so that both are stored or neither.
 *
 * @param <R> what the caller gets once it is stored, such as the state afterwards
 */
public sealed interface Prepared<R> {

    /**
     * Decided, not yet stored.
     *
     * @param appends each to another stream
     * @param result what holds once they are stored
     */
    record Ready<R>(List<Append> appends, R result) implements Prepared<R> {
        /** Copies the list and refuses two appends to one stream: the second could never meet its version. */
        public Ready {
            appends = List.copyOf(appends);
            Set<StreamName> streams = new HashSet<>();
            for (Append append : appends) {
                if (!streams.add(append.stream())) {
                    throw new IllegalArgumentException("two appends to " + append.stream());
                }
            }
        }
    }

    /** Refused; every broken rule is named, at least one. */
    record Refused<R>(List<Refusal> refusals) implements Prepared<R> {
        /** Copies the list and refuses an empty one. */
        public Refused {
            refusals = List.copyOf(refusals);
            if (refusals.isEmpty()) {
                throw new IllegalArgumentException("a refusal names at least one rule");
            }
        }
    }

    /** Every broken rule; empty where it is ready. */
    default List<Refusal> broken() {
        return switch (this) {
            case Ready<R> ready -> List.of();
            case Refused<R> refused -> refused.refusals();
        };
    }

    /** Both parts in one append, their results joined; or the refusals of both. */
    default <T, U> Prepared<U> with(Prepared<T> other, BiFunction<? super R, ? super T, ? extends U> join) {
        if (this instanceof Ready<R> mine && other instanceof Ready<T> theirs) {
            List<Append> appends = Stream.concat(mine.appends().stream(), theirs.appends().stream()).toList();
            return new Ready<>(appends, join.apply(mine.result(), theirs.result()));
        }
        return new Refused<>(Stream.concat(broken().stream(), other.broken().stream()).toList());
    }

    /** All {@code parts} in one append, their results in order; or the refusals of all of them. */
    static <R> Prepared<List<R>> all(List<Prepared<R>> parts) {
        Prepared<List<R>> joined = new Ready<>(List.of(), List.of());
        for (Prepared<R> part : parts) {
            joined = joined.with(part, (before, next) ->
                    Stream.concat(before.stream(), Stream.of(next)).toList());
        }
        return joined;
    }
}

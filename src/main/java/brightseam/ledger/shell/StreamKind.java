package brightseam.ledger.shell;

import brightseam.ledger.Entry;
import brightseam.ledger.NewEvent;
import brightseam.ledger.StreamName;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * One family of streams: what its events are called and what they make of the state.
 *
 * @param family the part of the stream name before the slash, such as {@code bin}
 * @param codec the table of its events
 * @param evolve the state after an event; the state before is empty for the first event of a stream
 * @param <S> the folded state, immutable
 * @param <E> the family's event type
 */
public record StreamKind<S, E>(String family, EventCodec<E> codec, BiFunction<Optional<S>, E, S> evolve) {

    /** The stream of {@code identity}. */
    public StreamName stream(Object identity) {
        return StreamName.of(family, identity);
    }

    /** The state after {@code entry}. */
    public S after(Optional<S> before, Entry entry) {
        return evolve.apply(before, codec.read(entry));
    }

    /** The written forms of {@code events}, in order. */
    public List<NewEvent> write(List<? extends E> events) {
        return events.stream().<NewEvent>map(codec::write).toList();
    }

    /** The state after {@code events}; empty only where there was none and nothing happened. */
    public Optional<S> fold(Optional<S> before, List<? extends E> events) {
        Optional<S> state = before;
        for (E event : events) {
            state = Optional.of(evolve.apply(state, event));
        }
        return state;
    }
}

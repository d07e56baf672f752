package brightseam.ledger.shell;

import brightseam.kernel.Decision;
import brightseam.ledger.Append;
import brightseam.ledger.Entry;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import brightseam.ledger.StreamName;
import brightseam.ledger.Versioned;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Loads the states of one family of streams and carries out commands on them: read, fold, decide, append.
 *
 * <p>A folded state is remembered with its version, so a long history is folded once and only its new end is read
 * again. Safe for several threads, as the ledger is.
 *
 * @param <S> the folded state, immutable
 * @param <E> the family's event type
 */
public final class EventStream<S, E> {

    private static final int REMEMBERED_MAX = 4096;

    private final Ledger ledger;
    private final StreamKind<S, E> kind;
    private final Attempts attempts;
    private final Recent<StreamName, Versioned<S>> folded = new Recent<>(REMEMBERED_MAX);

    /** Reads and writes the streams of {@code kind} in {@code ledger}. */
    public EventStream(Ledger ledger, StreamKind<S, E> kind) {
        this.ledger = ledger;
        this.kind = kind;
        this.attempts = new Attempts(ledger);
    }

    /** The state of {@code identity} and its version; empty where nothing was ever stored for it. */
    public Optional<Versioned<S>> load(Object identity) {
        StreamName stream = kind.stream(identity);
        Optional<Versioned<S>> known = folded.get(stream);
        Optional<Versioned<S>> loaded = known;
        for (Entry entry : ledger.readAfter(stream, known.map(Versioned::version).orElse(0L))) {
            S state = kind.after(loaded.map(Versioned::state), entry);
            loaded = Optional.of(new Versioned<>(state, entry.version()));
        }
        if (!loaded.equals(known)) {
            folded.put(stream, loaded.orElseThrow());
        }
        return loaded;
    }

    /** What {@code decider} would store on {@code identity} now. Nothing is stored. */
    public Prepared<S> prepare(Object identity, Function<Optional<S>, Decision<E>> decider) {
        return prepareInTurn(identity, List.of(decider));
    }

    /**
     * What {@code deciders} would store on {@code identity} in one append, each deciding on what those before it leave.
     * The first that refuses ends it. Nothing is stored.
     *
     * @throws IllegalStateException where no decider makes an event for a stream that does not exist
     */
    public Prepared<S> prepareInTurn(Object identity, List<Function<Optional<S>, Decision<E>>> deciders) {
        Optional<Versioned<S>> loaded = load(identity);
        Optional<S> state = loaded.map(Versioned::state);
        List<E> events = new ArrayList<>();
        for (Function<Optional<S>, Decision<E>> decider : deciders) {
            switch (decider.apply(state)) {
                case Decision.Refused<E> refused -> {
                    return new Prepared.Refused<>(refused.refusals());
                }
                case Decision.Accepted<E> accepted -> {
                    events.addAll(accepted.events());
                    state = kind.fold(state, accepted.events());
                }
            }
        }
        S after = state.orElseThrow(() -> new IllegalStateException("nothing begins " + kind.stream(identity)));
        long version = loaded.map(Versioned::version).orElse(0L);
        return new Prepared.Ready<>(List.of(new Append(kind.stream(identity), version, kind.write(events))), after);
    }

    /**
     * Decides and stores on one stream; where somebody else was first, decides again.
     *
     * @throws brightseam.ledger.NotStoredException where the disk failed, or others were first at every attempt
     */
    public Outcome<S> execute(Object identity, Function<Optional<S>, Decision<E>> decider) {
        return attempts.commit(() -> prepare(identity, decider));
    }
}

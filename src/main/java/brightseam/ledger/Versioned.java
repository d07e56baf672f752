package brightseam.ledger;

import java.util.Objects;

/**
 * A state together with the version of the stream that it was folded from.
 *
 * @param state the folded state
 * @param version the version of the last entry in it, from 1
 */
public record Versioned<T>(T state, long version) {

    /** Refuses a missing state and a version below 1: a stream without entries has no state. */
    public Versioned {
        Objects.requireNonNull(state, "state");
        if (version < 1) {
            throw new IllegalArgumentException("version below 1: " + version);
        }
    }
}

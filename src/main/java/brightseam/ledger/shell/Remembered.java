package brightseam.ledger.shell;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * Something that follows from one family of streams, read again only where something of that family was stored. Safe
 * for several threads, as the reading is.
 *
 * @param <T> what is read, immutable
 */
public final class Remembered<T> {

    private final Ledger ledger;
    private final String family;
    private final Supplier<T> reading;
    private volatile Optional<Known<T>> known = Optional.empty();

    private record Known<T>(Object changes, T value) {}

    /** Reads by {@code reading}, from rows that follow the streams of {@code family} in {@code ledger}. */
    public Remembered(Ledger ledger, String family, Supplier<T> reading) {
        this.ledger = ledger;
        this.family = family;
        this.reading = reading;
    }

    /** What holds now; whatever was acknowledged before this call is in it. */
    public T get() {
        Object changes = ledger.changes(family);
        Optional<Known<T>> before = known;
        if (before.isPresent() && before.get().changes().equals(changes)) {
            return before.get().value();
        }
        T value = reading.get();
        known = Optional.of(new Known<>(changes, value));
        return value;
    }
}

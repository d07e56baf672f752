package brightseam.ledger.shell;

import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.NotStoredException;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import java.util.List;
import java.util.function.Supplier;

/**
 * Stores what was decided, and where somebody else was first, has it decided again on the newer state.
 *
 * <p>The loser of a race thus hears the rule that now stands against it, not that there was a race.
 */
public final class Attempts {

    /** More tablets than this do not meet on one stream within one write; each conflict means that one got through. */
    static final int ATTEMPTS_MAX = 64;

    private final Ledger ledger;

    /** Stores in {@code ledger}. */
    public Attempts(Ledger ledger) {
        this.ledger = ledger;
    }

    /**
     * Stores what {@code preparing} answers. It must load its states anew on every call.
     *
     * @throws NotStoredException where the disk failed, or others were first at every attempt
     */
    public <R> Outcome<R> commit(Supplier<Prepared<R>> preparing) {
        Appended.Conflict last = null;
        for (int attempt = 1; attempt <= ATTEMPTS_MAX; attempt++) {
            switch (preparing.get()) {
                case Prepared.Refused<R> refused -> {
                    return new Outcome.Refused<>(refused.refusals());
                }
                case Prepared.Ready<R> ready -> {
                    switch (store(ready)) {
                        case Appended.Stored stored -> {
                            return new Outcome.Done<>(ready.result(), stored.entries());
                        }
                        case Appended.Conflict conflict -> last = conflict;
                        case Appended.NotStored failed -> throw new NotStoredException(failed.reason());
                    }
                }
            }
        }
        throw new NotStoredException("others were first on " + last.stream() + " in " + ATTEMPTS_MAX + " attempts");
    }

    private Appended store(Prepared.Ready<?> ready) {
        boolean unchanged = ready.appends().stream().map(Append::events).allMatch(List::isEmpty);
        return unchanged ? new Appended.Stored(List.of()) : ledger.append(ready.appends());
    }
}

package brightseam.ledger;

import brightseam.kernel.Refusal;
import java.util.List;

/**
 * What a command came to.
 *
 * @param <R> what the caller gets, such as the state afterwards
 */
public sealed interface Outcome<R> {

    /**
     * On disk.
     *
     * @param result what holds now
     * @param entries what was stored; empty where nothing had to change
     */
    record Done<R>(R result, List<Entry> entries) implements Outcome<R> {
        /** Copies the list. */
        public Done {
            entries = List.copyOf(entries);
        }
    }

    /** Refused; nothing was stored. Every broken rule is named. */
    record Refused<R>(List<Refusal> refusals) implements Outcome<R> {
        /** Copies the list. */
        public Refused {
            refusals = List.copyOf(refusals);
        }
    }
}

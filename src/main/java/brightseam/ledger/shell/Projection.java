package brightseam.ledger.shell;

import brightseam.ledger.Entry;
import java.util.List;

/**
 * Tables that screens read, made from entries alone. Called inside the ledger's transaction, entries in order; no clock,
 * no randomness, so that a rebuild gives the same rows.
 */
public interface Projection {

    /** The tables this projection owns; a rebuild empties them first. */
    List<String> tables();

    /** Brings the tables up to date with {@code entry}; ignores types it does not know. */
    void apply(Entry entry);
}

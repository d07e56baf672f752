package brightseam.ledger.shell;

import brightseam.ledger.Entry;
import java.util.List;

/**
 * Tables that screens read, made from entries alone. Called inside the ledger's transaction, entries in order; no
 * clock, no randomness, no numbering by the database, so that a rebuild gives the same rows. An implementation is a
 * bean that asks for {@code JdbcClient}, never for the ledger; where it throws, the append that it was told of is
 * undone.
 */
public interface Projection {

    /** The tables this projection owns, one after those that it refers to; a rebuild empties them first. */
    List<String> tables();

    /** Brings the tables up to date with {@code entry}; ignores types it does not know. */
    void apply(Entry entry);
}

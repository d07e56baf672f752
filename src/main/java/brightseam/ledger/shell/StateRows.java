package brightseam.ledger.shell;

import java.util.List;
import java.util.Optional;

/**
 * The rows that hold one family's folded states.
 *
 * @param <S> the folded state
 */
public interface StateRows<S> {

    /** The tables, those that others refer to first. */
    List<String> tables();

    /** The state in the rows of {@code identity}. */
    Optional<S> find(String identity);

    /**
     * Brings the rows from {@code before} to {@code after}.
     *
     * @param before what {@link #find} answered; empty where there are no rows yet
     * @param position of the entry that made the change
     */
    void put(Optional<S> before, S after, long position);
}

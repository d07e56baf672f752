package brightseam.ledger.shell;

/** Somebody who listens to the ledger; closing ends that, does no I/O and throws nothing. */
public interface Subscription extends AutoCloseable {

    @Override
    void close();
}

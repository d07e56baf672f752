package brightseam.ledger;

/** Nothing of a command was stored, though no rule stood against it. It may be given again. */
public final class NotStoredException extends RuntimeException {

    /** Says why, for the log and the administrator. */
    public NotStoredException(String reason) {
        super("nothing was stored: " + reason);
    }
}

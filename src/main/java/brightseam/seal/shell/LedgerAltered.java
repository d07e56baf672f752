package brightseam.seal.shell;

/** The ledger is not the one that was sealed. The message is a part of a sentence for the administrator. */
public final class LedgerAltered extends RuntimeException {

    LedgerAltered(String message) {
        super(message);
    }
}

package brightseam.seal.shell;

/** The server must not start: what was sealed and what is there do not fit. The message says so to people. */
public final class SealsUnusable extends RuntimeException {

    SealsUnusable(String message) {
        super(message);
    }
}

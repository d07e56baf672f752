package brightseam.app;

/** The data folder cannot be used; the message is one or two sentences for whoever starts the server. */
public final class UnusableData extends RuntimeException {

    UnusableData(String message, Throwable cause) {
        super(message, cause);
    }
}

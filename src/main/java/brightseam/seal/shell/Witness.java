package brightseam.seal.shell;

import brightseam.seal.shell.Seals.Sealed;
import java.io.IOException;
import java.util.Optional;

/** A second place that keeps heads. */
interface Witness {

    /** How people know it: a folder's path or an address, without anything secret. */
    String place();

    /**
     * Hands {@code head} over; returns once it is there.
     *
     * @throws IOException where it is not, with a reason for the page
     */
    void keep(Sealed head) throws IOException, InterruptedException;

    /** The newest head's note that it has; empty where it cannot be asked or has none. */
    Optional<String> newest() throws IOException;
}

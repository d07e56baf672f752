package brightseam.seal;

import brightseam.kernel.Origin;
import java.time.Instant;
import java.util.Optional;

/** What happened to the log itself. It stands in the ledger like everything else, so heads cover it. */
public sealed interface LogEvent {

    /** Where it came from. */
    Origin origin();

    /**
     * Another key signs from now on.
     *
     * @param oldKey the public half of the key before, {@code name+id+key}; {@code name+id} alone where more is lost
     * @param oldFrom when that was made
     * @param newKey the public half of the new key
     * @param oldUntil when the old key signs for the last time; now where it is lost
     * @param isLost whether the old key is lost, or somebody else may have it: then no older key signs any more, and
     *     what is signed by one of them alone from here on proves nothing
     * @param reason in a person's words
     */
    record KeyRotated(String oldKey, Instant oldFrom, String newKey, Instant oldUntil, boolean isLost, String reason,
            Origin origin) implements LogEvent {}

    /**
     * The ledger went on although something that had been sealed was gone.
     *
     * @param sealedSize how many entries the last head had
     * @param foundSize how many were found that it may go on from
     * @param head the last head's note; empty where it was not found
     * @param by whose decision it was, as given
     * @param reason why, as given
     */
    record LossNoted(long sealedSize, long foundSize, Optional<String> head, String by, String reason, Origin origin)
            implements LogEvent {}
}

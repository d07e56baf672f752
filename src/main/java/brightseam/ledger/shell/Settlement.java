package brightseam.ledger.shell;

import brightseam.ledger.Entry;
import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Finds out what became of entries whose commit or forced write failed. Used by the writer's thread alone.
 *
 * <p>While that cannot be told, nothing more may be written. Entries that are found after a failed commit are forced
 * and count. Entries that are found after a failed forced write end the writing until a restart: the system may have
 * dropped the pages, and a second attempt would succeed without a word.
 */
final class Settlement {

    private static final Logger LOG = LoggerFactory.getLogger(Settlement.class);

    private final LongFunction<Optional<String>> hashAt;
    private final ForcedWrite forcedWrite;
    private List<Entry> open = List.of();
    private boolean forceFailed;
    private boolean halted;

    /** Looks with {@code hashAt}, which answers the hash of the entry at a position. */
    Settlement(LongFunction<Optional<String>> hashAt, ForcedWrite forcedWrite) {
        this.hashAt = hashAt;
        this.forcedWrite = forcedWrite;
    }

    /** What is known of the entries in question. */
    enum Finding {
        STORED,
        ABSENT,
        UNKNOWN
    }

    /** Takes {@code entries}, whose commit failed, and looks. */
    Finding afterFailedCommit(List<Entry> entries) {
        open = entries;
        return settle();
    }

    /** Takes {@code entries}, which were committed and whose forced write failed, and looks. */
    Finding afterFailedForce(List<Entry> entries) {
        open = entries;
        forceFailed = true;
        return settle();
    }

    /** Whether writing may go on; looks again where something is open. */
    boolean isSettled() {
        return settle() != Finding.UNKNOWN;
    }

    /** Why writing may not go on. */
    String reason() {
        return halted
                ? "a forced write failed, restart the server: what came last may or may not be found then"
                : "the database does not answer for what came last";
    }

    private Finding settle() {
        if (halted) {
            return Finding.UNKNOWN;
        }
        Optional<Boolean> found = open.isEmpty() ? Optional.of(false) : isThere(open.getLast());
        if (found.isEmpty()) {
            return Finding.UNKNOWN;
        }
        if (found.get() && (forceFailed || !isForced())) {
            halted = true;
            return Finding.UNKNOWN;
        }
        open = List.of();
        forceFailed = false;
        return found.get() ? Finding.STORED : Finding.ABSENT;
    }

    private Optional<Boolean> isThere(Entry entry) {
        try {
            return Optional.of(hashAt.apply(entry.position()).filter(entry.hash()::equals).isPresent());
        } catch (RuntimeException failure) {
            LOG.error("the database does not answer", failure);
            return Optional.empty();
        }
    }

    private boolean isForced() {
        try {
            forcedWrite.force();
            return true;
        } catch (RuntimeException failure) {
            LOG.error("no forced write", failure);
            return false;
        }
    }
}

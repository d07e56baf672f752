package brightseam.check.shell;

import java.time.Instant;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** How the backups stand that the server makes by itself, for administrators. */
@Component
public class BackupStanding {

    private volatile Now now = new Now(false, Optional.empty(), Optional.empty());

    /**
     * How they stand.
     *
     * @param wanted whether the server makes any
     * @param last when the newest that is there was made
     * @param failure why the last attempt failed; empty where it did not
     */
    public record Now(boolean wanted, Optional<Instant> last, Optional<String> failure) {}

    /** How they stand now. */
    public Now now() {
        return now;
    }

    /** The same in a sentence. */
    public String words() {
        Now seen = now;
        String newest = seen.last().map(at -> "The newest backup was made at " + at + " (UTC).")
                .orElse("There is no backup yet.");
        if (seen.failure().isPresent()) {
            return "THE LAST BACKUP FAILED: " + seen.failure().get() + ". " + newest;
        }
        return seen.wanted() ? newest : "This server makes no backups by itself: it was started without"
                + " brightseam.backup-folder, or has not looked yet.";
    }

    /** The newest backup is of {@code last}, and nothing is wrong. */
    public void went(Optional<Instant> last) {
        now = new Now(true, last, Optional.empty());
    }

    /** The last attempt failed because of {@code why}; the newest backup is of {@code last}. */
    public void failed(Optional<Instant> last, String why) {
        now = new Now(true, last, Optional.of(why));
    }
}

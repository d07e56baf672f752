package brightseam.ledger.shell;

import brightseam.ledger.Entry;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** The end of the whole ledger. */
@Service
public final class LastEntries {

    private final EntryRows rows;

    LastEntries(JdbcClient jdbc) {
        this.rows = new EntryRows(jdbc);
    }

    /** The last {@code count} entries in order; fewer where there are not as many. */
    public List<Entry> last(int count) {
        return rows.allAfter(Math.max(0, rows.lastPosition() - count), count);
    }
}

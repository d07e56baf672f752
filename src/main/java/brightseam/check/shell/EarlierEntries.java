package brightseam.check.shell;

import brightseam.check.StoredRow;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.jdbc.core.JdbcTemplate;

/**
 * Projections that fold remember the streams that they saw last, and read others from the ledger's own table. So
 * before an entry is replayed whose stream was not seen for long, what came before it in its stream is put there.
 */
final class EarlierEntries {

    /** Half of what a projection remembers, of all streams together: what is in here, it remembers. */
    private static final int REMEMBERED = 2_048;

    private final StoredRows rows;
    private final JdbcTemplate fresh;
    private final Map<String, Boolean> recent = new LinkedHashMap<>(64, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Boolean> eldest) {
            return size() > REMEMBERED;
        }
    };

    EarlierEntries(StoredRows rows, JdbcTemplate fresh) {
        this.rows = rows;
        this.fresh = fresh;
    }

    void provide(List<StoredRow> chunk) {
        for (StoredRow row : chunk) {
            if (recent.put(row.stream(), true) == null && row.version() > 1) {
                insert(row);
            }
        }
    }

    private void insert(StoredRow next) {
        Long held = fresh.queryForObject(
                "select coalesce(max(version), 0) from ledger_entry where stream = ?", Long.class, next.stream());
        StoredRows.insert(fresh, rows.ofStream(next.stream(), held == null ? 0 : held, next.position()));
    }
}

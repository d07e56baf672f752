package brightseam.ledger.shell;

import brightseam.ledger.Chain;
import brightseam.ledger.Entry;
import brightseam.ledger.StreamName;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The table {@code ledger_entry}. */
final class EntryRows {

    private final JdbcClient jdbc;

    EntryRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Where a stream ends: version 0 and the genesis hash before its first entry. */
    record Head(long version, String hash) {}

    void insert(Entry entry) {
        jdbc.sql("""
                        insert into ledger_entry (position, stream, version, type, json, previous, hash)
                        values (?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(
                        entry.position(), entry.stream().value(), entry.version(), entry.type(), entry.json(),
                        entry.previous(), entry.hash())
                .update();
    }

    Head head(StreamName stream) {
        return jdbc.sql("""
                        select version, hash from ledger_entry
                        where stream = ? order by stream, version desc fetch first 1 row only
                        """)
                .param(stream.value())
                .query((row, number) -> new Head(row.getLong(1), row.getString(2)))
                .optional()
                .orElse(new Head(0, Chain.GENESIS));
    }

    long lastPosition() {
        return jdbc.sql("select coalesce(max(position), 0) from ledger_entry").query(Long.class).single();
    }

    Optional<String> hashAt(long position) {
        return jdbc.sql("select hash from ledger_entry where position = ?")
                .param(position)
                .query(String.class)
                .optional();
    }

    List<Entry> after(StreamName stream, long version) {
        return jdbc.sql("""
                        select position, stream, version, type, json, previous, hash from ledger_entry
                        where stream = ? and version > ? order by version
                        """)
                .params(stream.value(), version)
                .query(EntryRows::entry)
                .list();
    }

    List<Entry> allAfter(long position, int limit) {
        return jdbc.sql("""
                        select position, stream, version, type, json, previous, hash from ledger_entry
                        where position > ? order by position fetch first ? rows only
                        """)
                .params(position, limit)
                .query(EntryRows::entry)
                .list();
    }

    private static Entry entry(ResultSet row, int number) throws SQLException {
        return new Entry(
                row.getLong("position"), new StreamName(row.getString("stream")), row.getLong("version"),
                row.getString("type"), row.getString("json"), row.getString("previous"), row.getString("hash"));
    }
}

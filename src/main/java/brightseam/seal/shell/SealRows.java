package brightseam.seal.shell;

import brightseam.seal.Hash;
import brightseam.seal.shell.Seals.Sealed;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The table {@code ledger_seal}. */
final class SealRows {

    private static final String COLUMNS = "select size, root, note, sealed_millis from ledger_seal ";

    private final JdbcClient jdbc;

    SealRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void insert(Sealed head) {
        jdbc.sql("insert into ledger_seal (size, root, note, sealed_millis) values (?, ?, ?, ?)")
                .params(head.size(), head.root().hex(), head.note(), head.at().toEpochMilli()).update();
    }

    Optional<Sealed> latest() {
        return jdbc.sql(COLUMNS + "order by size desc fetch first 1 row only").query(SealRows::head).optional();
    }

    Optional<Sealed> at(long size) {
        return jdbc.sql(COLUMNS + "where size = ?").param(size).query(SealRows::head).optional();
    }

    /** The first head with a size of at least {@code position}. */
    Optional<Sealed> firstFrom(long position) {
        return jdbc.sql(COLUMNS + "where size >= ? order by size fetch first 1 row only").param(position)
                .query(SealRows::head).optional();
    }

    /** The last head with a size below {@code position}. */
    Optional<Sealed> lastBelow(long position) {
        return jdbc.sql(COLUMNS + "where size < ? order by size desc fetch first 1 row only").param(position)
                .query(SealRows::head).optional();
    }

    void deleteAfter(long size) {
        jdbc.sql("delete from ledger_seal where size > ?").param(size).update();
    }

    /** The last heads, the newest first. */
    List<Sealed> last(int limit) {
        return jdbc.sql(COLUMNS + "order by size desc fetch first ? rows only").param(limit)
                .query(SealRows::head).list();
    }

    List<Sealed> after(long size, int limit) {
        return jdbc.sql(COLUMNS + "where size > ? order by size fetch first ? rows only").params(size, limit)
                .query(SealRows::head).list();
    }

    private static Sealed head(ResultSet row, int number) throws SQLException {
        return new Sealed(row.getLong("size"), Hash.fromHex(row.getString("root")), row.getString("note"),
                Instant.ofEpochMilli(row.getLong("sealed_millis")));
    }
}

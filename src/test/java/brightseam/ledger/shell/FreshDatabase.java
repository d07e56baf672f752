package brightseam.ledger.shell;

import brightseam.ledger.Entry;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcDataSource;
import org.springframework.jdbc.core.simple.JdbcClient;

/** An empty database with every migration, on either kind of them, and the check that rows follow from the ledger. */
public final class FreshDatabase {

    private FreshDatabase() {}

    public static JdbcClient migrated() {
        return JdbcClient.create(source());
    }

    /** The same, as the database itself. */
    public static DataSource source() {
        if (TestDatabase.isPostgres()) {
            return PostgresServer.shared().fresh();
        }
        JdbcDataSource source = new JdbcDataSource();
        source.setURL("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1");
        Flyway.configure()
                .dataSource(source)
                .locations("classpath:db/migration/common")
                .load()
                .migrate();
        return source;
    }

    /** Every row of the projection's tables, as text, sorted. */
    public static Map<String, List<String>> rows(JdbcClient jdbc, Projection projection) {
        Map<String, List<String>> rows = new TreeMap<>();
        projection.tables().forEach(table -> rows.put(
                table,
                jdbc.sql("select * from " + table).query().listOfRows().stream()
                        .map(row -> new TreeMap<>(row).toString())
                        .sorted()
                        .toList()));
        return rows;
    }

    /** Empties the projection's tables and fills them again from the whole ledger. */
    public static void rebuild(JdbcClient jdbc, Projection projection, Ledger ledger) {
        projection.tables().reversed().forEach(table -> jdbc.sql("delete from " + table).update());
        for (Entry entry : ledger.readAllAfter(0, Integer.MAX_VALUE)) {
            projection.apply(entry);
        }
    }
}

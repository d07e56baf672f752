package brightseam.ledger.shell;

import brightseam.app.ShopDatabase;
import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import javax.sql.DataSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;

/** The real ledger on a database of its own, without Spring: all migrations, and the projections that a test gives. */
public final class TestLedger implements AutoCloseable {

    private final HikariDataSource source;
    private final JdbcClient jdbc;
    private final StoredLedger ledger;
    private final Rebuild rebuild;

    private TestLedger(HikariDataSource source, List<Function<JdbcClient, Projection>> projections) {
        this.source = source;
        this.jdbc = JdbcClient.create(source);
        JdbcTransactionManager transactions = new JdbcTransactionManager(source);
        List<Projection> made = projections.stream().map(make -> make.apply(jdbc)).toList();
        this.ledger = new StoredLedger(source, jdbc, transactions, made);
        this.rebuild = new Rebuild(ledger, made, transactions, jdbc, source);
    }

    /** A ledger in memory, or on the run's PostgreSQL, for tests of features. */
    @SafeVarargs
    public static TestLedger inMemory(Function<JdbcClient, Projection>... projections) {
        return new TestLedger(TestDatabase.isPostgres() ? PostgresServer.shared().fresh()
                : embedded("jdbc:h2:mem:" + UUID.randomUUID()), List.of(projections));
    }

    /** A node on the PostgreSQL at {@code url}, which has every migration. */
    @SafeVarargs
    static TestLedger node(String url, Function<JdbcClient, Projection>... projections) {
        return new TestLedger(PostgresServer.pool(url), List.of(projections));
    }

    /** A ledger in {@code folder}, opened as the server opens its own. */
    @SafeVarargs
    public static TestLedger inFolder(Path folder, Function<JdbcClient, Projection>... projections) {
        return at("file:" + folder.toAbsolutePath().resolve("brightseam"), projections);
    }

    /** A ledger at H2's {@code path}, which may begin with a file system of H2's. */
    @SafeVarargs
    static TestLedger at(String path, Function<JdbcClient, Projection>... projections) {
        return new TestLedger(embedded("jdbc:h2:" + path + ";WRITE_DELAY=0"), List.of(projections));
    }

    private static HikariDataSource embedded(String url) {
        return TestDatabase.migrated(ShopDatabase.pool(url), "h2");
    }

    /** The ledger. */
    public Ledger ledger() {
        return ledger;
    }

    /** The last position of the whole ledger; 0 where it is empty. */
    public long lastPosition() {
        return ledger.lastPosition();
    }

    /** The rebuild of the projections that were given. */
    public Rebuild rebuild() {
        return rebuild;
    }

    /** How far this ledger is on disk, from now on. */
    public OnDisk onDisk() {
        return new OnDisk(source, jdbc, ledger);
    }

    /** The database, for projections and for looking at tables. */
    public JdbcClient jdbc() {
        return jdbc;
    }

    /** The database's pool. */
    public DataSource source() {
        return source;
    }

    @Override
    public void close() {
        ledger.close();
        source.close();
    }
}

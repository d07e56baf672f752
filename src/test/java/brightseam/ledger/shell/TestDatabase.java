package brightseam.ledger.shell;

import brightseam.app.ShopDatabase;
import com.zaxxer.hikari.HikariDataSource;
import java.util.UUID;
import org.flywaydb.core.Flyway;

/**
 * The kind of database that this test run is on: H2, or PostgreSQL where the system property
 * {@code brightseam.test-database} says so. The test command runs what touches a database on both.
 */
final class TestDatabase {

    private TestDatabase() {}

    static boolean isPostgres() {
        return "postgresql".equals(System.getProperty("brightseam.test-database"));
    }

    /** A pool on a new database with every migration, in memory or on the run's own server. */
    static HikariDataSource migrated() {
        return isPostgres()
                ? PostgresServer.shared().fresh()
                : migrated(ShopDatabase.pool("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1"), "h2");
    }

    /** Brings {@code source} to the last migration for {@code vendor}. */
    static HikariDataSource migrated(HikariDataSource source, String vendor) {
        Flyway.configure().dataSource(source)
                .locations("classpath:db/migration/common", "classpath:db/migration/" + vendor)
                .load().migrate();
        return source;
    }
}

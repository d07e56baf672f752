package brightseam.ledger.shell;

import static brightseam.ledger.shell.Signatures.append;
import static brightseam.ledger.shell.Signatures.stream;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.app.ShopDatabase;
import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.Entry;
import com.zaxxer.hikari.HikariDataSource;
import java.util.List;
import java.util.UUID;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;

/** A shop's database as it was before records were sealed and nodes shared it, brought up with everything in it. */
class UpgradeTest {

    private static final String BEFORE = "80";

    @Test
    void a_database_of_an_earlier_version_is_brought_up_with_its_records_in_place() {
        String vendor = TestDatabase.isPostgres() ? "postgresql" : "h2";
        try (HikariDataSource source = empty()) {
            flyway(source, vendor, BEFORE);
            List<Entry> before = List.of();
            try (StoredLedger ledger = ledger(source)) {
                for (int i = 0; i < 20; i++) {
                    sign(ledger, append("T-1", i, "n" + i));
                }
                before = ledger.read(stream("T-1"));
            }
            JdbcClient jdbc = JdbcClient.create(source);
            jdbc.sql("insert into shop_clock values (1, 90000, 5, 6, 'boot', 7)").update();
            jdbc.sql("insert into person_pin values ('P-0001', 'hash', 2, 3)").update();
            flyway(source, vendor, "latest");
            try (StoredLedger ledger = ledger(source)) {
                sign(ledger, append("T-1", 20, "after"));
                assertThat(ledger.read(stream("T-1"))).hasSize(21).startsWith(before.toArray(Entry[]::new));
            }
            assertThat(jdbc.sql("select elapsed_millis from shop_clock where speed = 1 and noted_by = ''")
                    .query(Long.class).single()).isEqualTo(90_000);
            assertThat(jdbc.sql("select failures from person_pin").query(Integer.class).single()).isEqualTo(2);
        }
    }

    private static HikariDataSource empty() {
        if (!TestDatabase.isPostgres()) {
            return ShopDatabase.pool("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1");
        }
        PostgresServer server = PostgresServer.shared();
        return PostgresServer.pool(server.url(server.make("upgrade" + UUID.randomUUID().toString().substring(0, 8))));
    }

    private static StoredLedger ledger(HikariDataSource source) {
        return new StoredLedger(source, JdbcClient.create(source), new JdbcTransactionManager(source), List.of());
    }

    private static void sign(Ledger ledger, Append append) {
        assertThat(ledger.append(List.of(append))).isInstanceOf(Appended.Stored.class);
    }

    private static void flyway(HikariDataSource source, String vendor, String target) {
        Flyway.configure().dataSource(source).target(target)
                .locations("classpath:db/migration/common", "classpath:db/migration/" + vendor).load().migrate();
    }
}

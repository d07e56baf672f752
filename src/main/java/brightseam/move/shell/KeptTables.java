package brightseam.move.shell;

import brightseam.check.shell.FreshProjections;
import brightseam.ledger.shell.Projection;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import javax.sql.DataSource;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Which tables hold what the ledger does not, and may leave the shop. What nobody sorted counts as secret. */
final class KeptTables {

    /** Readings, the clock, and what is known of pictures. */
    static final List<String> OPEN = List.of("picture", "series_block", "series_span", "series_tail", "shop_clock");

    /** Made anew, moved in another form, or true of this server alone. */
    private static final Set<String> LEFT = Set.of("flyway_schema_history", "ledger_entry", "ledger_entry_kept",
            "ledger_seal", "ledger_tile", "picture_part", "series_post", "shop_system_use", "tablet");

    private KeptTables() {}

    /** The tables with secrets, such as hashes of PINs. */
    static List<String> secret(DataSource source) {
        Set<String> tables = new TreeSet<>(all(source));
        tables.removeAll(OPEN);
        tables.removeAll(LEFT);
        tables.removeAll(projected(JdbcClient.create(source)));
        return List.copyOf(tables);
    }

    private static Set<String> projected(JdbcClient jdbc) {
        Set<String> tables = new HashSet<>();
        for (Projection projection : FreshProjections.make(jdbc)) {
            tables.addAll(projection.tables());
        }
        return tables;
    }

    private static List<String> all(DataSource source) {
        List<String> tables = new ArrayList<>();
        try (Connection connection = source.getConnection();
                ResultSet found = connection.createStatement().executeQuery(
                        "select table_name from information_schema.tables where lower(table_schema) = 'public'"
                                + " and table_type = 'BASE TABLE'")) {
            while (found.next()) {
                tables.add(found.getString(1).toLowerCase(Locale.ROOT));
            }
            return tables;
        } catch (SQLException failure) {
            throw new IllegalStateException("the tables cannot be listed: " + failure.getMessage(), failure);
        }
    }
}

package brightseam.app;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.springframework.core.env.Environment;

/**
 * The connections to PostgreSQL. A commit that the server acknowledges is on its disk: every connection asks for it,
 * and a server that was set up to answer before is refused.
 */
public final class PostgresPool {

    private static final int CONNECTIONS_MAX = 12;
    private static final int ANSWER_SECONDS_MAX = 60;
    private static final int CONNECT_SECONDS_MAX = 5;
    /**
     * The server drops a node that lost its power within eleven seconds, and with it the locks that it held; names of
     * PostgreSQL's documentation, chapter "Connections and Authentication".
     */
    private static final String SESSION = "-c synchronous_commit=on -c tcp_keepalives_idle=5"
            + " -c tcp_keepalives_interval=2 -c tcp_keepalives_count=3";
    /** Orders text as Java does, and no update of the system's language files can break an index. */
    private static final Set<String> COLLATIONS = Set.of("C", "POSIX", "C.UTF-8", "C.utf8");

    private PostgresPool() {}

    /**
     * A pool by {@code spring.datasource.url}, {@code .username} and {@code .password}.
     *
     * @throws UnusableData where the server does not answer, could lose what it acknowledged, or orders text otherwise
     */
    static HikariDataSource open(Environment settings) {
        HikariDataSource source = to(settings.getRequiredProperty("spring.datasource.url"),
                settings.getProperty("spring.datasource.username", "brightseam"),
                settings.getProperty("spring.datasource.password", ""));
        try (Connection connection = source.getConnection()) {
            refuseUnsafe(connection);
            return source;
        } catch (SQLException failure) {
            source.close();
            throw new UnusableData("The database cannot be read: " + failure.getMessage(), failure);
        } catch (UnusableData unsafe) {
            source.close();
            throw unsafe;
        }
    }

    /**
     * A pool to {@code url}, which begins with {@code jdbc:postgresql:}.
     *
     * @throws UnusableData where the server does not answer
     */
    public static HikariDataSource to(String url, String user, String password) {
        HikariConfig config = new HikariConfig();
        config.setPoolName("brightseam");
        config.setJdbcUrl(url);
        config.setUsername(user);
        config.setPassword(password);
        config.setMaximumPoolSize(CONNECTIONS_MAX);
        config.addDataSourceProperty("options", SESSION);
        config.addDataSourceProperty("ApplicationName", "brightseam");
        config.addDataSourceProperty("tcpKeepAlive", "true");
        config.addDataSourceProperty("connectTimeout", CONNECT_SECONDS_MAX);
        config.addDataSourceProperty("socketTimeout", ANSWER_SECONDS_MAX);
        try {
            return new HikariDataSource(config);
        } catch (RuntimeException failure) {
            throw new UnusableData("The database cannot be opened: " + root(failure).getMessage()
                    + " Look at spring.datasource.url, .username and .password, and whether the server runs.", failure);
        }
    }

    private static void refuseUnsafe(Connection connection) throws SQLException {
        Map<String, String> found = found(connection);
        for (String setting : Set.of("fsync", "full_page_writes", "synchronous_commit")) {
            if (!"on".equals(found.get(setting))) {
                throw new UnusableData("PostgreSQL runs with " + setting + "=" + found.get(setting) + ": what it"
                        + " acknowledged could be lost. Set it to on and restart the database server.", null);
            }
        }
        if (!"UTF8".equals(found.get("server_encoding")) || !COLLATIONS.contains(found.get("collation"))) {
            throw new UnusableData("The database has the encoding " + found.get("server_encoding")
                    + " and the collation " + found.get("collation") + ". Make it anew: create database brightseam"
                    + " encoding 'UTF8' locale 'C' template template0.", null);
        }
    }

    private static Map<String, String> found(Connection connection) throws SQLException {
        Map<String, String> found = new LinkedHashMap<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("""
                        select name, setting from pg_settings
                        where name in ('fsync', 'full_page_writes', 'synchronous_commit', 'server_encoding')
                        union all
                        select 'collation', datcollate from pg_database where datname = current_database()
                        """)) {
            while (rows.next()) {
                found.put(rows.getString(1), rows.getString(2));
            }
        }
        return found;
    }

    private static Throwable root(Throwable failure) {
        return failure.getCause() == null ? failure : root(failure.getCause());
    }
}

package brightseam.app;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.flyway.autoconfigure.FlywayMigrationStrategy;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.env.Environment;

/**
 * The shop's database: an embedded one in the data folder, or with the profile {@code postgresql} a PostgreSQL that
 * several nodes may share. The data folder holds keys and heads in either case.
 */
@Configuration(proxyBeanMethods = false)
public class ShopDatabase {

    private static final int CONNECTIONS_MAX = 12;

    @Bean(destroyMethod = "close")
    DataFolder dataFolder(
            @Value("${brightseam.data:./data}") Path path, @Value("${brightseam.shop:empty}") String shop,
            Environment settings) {
        ShopKind.refuseMisspelled(shop);
        return isServer(settings) ? DataFolder.takeBesideServer(path) : DataFolder.take(path);
    }

    @Bean(destroyMethod = "close")
    HikariDataSource dataSource(DataFolder folder, Environment settings) {
        HikariDataSource source = isServer(settings) ? PostgresPool.open(settings) : embedded(folder);
        if (folder.isInUse()) {
            refuseEmpty(source);
        }
        return source;
    }

    /** The folder counts as in use from the moment that the tables exist. */
    @Bean
    FlywayMigrationStrategy migration(DataFolder folder) {
        return flyway -> {
            flyway.migrate();
            folder.markInUse();
        };
    }

    /**
     * A pool on {@code url}. A connection shows a sign of life before it is handed out: a full disk closes H2 under its
     * connections, and fresh ones open it again once there is room.
     *
     * @throws UnusableData where the database cannot be opened
     */
    public static HikariDataSource pool(String url) {
        System.setProperty("com.zaxxer.hikari.aliveBypassWindowMs", "0");
        HikariConfig config = new HikariConfig();
        config.setPoolName("brightseam");
        config.setJdbcUrl(url);
        config.setUsername("sa");
        config.setPassword("");
        config.setConnectionTestQuery("select 1");
        config.setMaximumPoolSize(CONNECTIONS_MAX);
        try {
            return new HikariDataSource(config);
        } catch (RuntimeException failure) {
            throw new UnusableData("The database cannot be opened: " + root(failure).getMessage(), failure);
        }
    }

    /** Whether the shop's records lie in a database server that other nodes may use too. */
    static boolean isServer(Environment settings) {
        return settings.matchesProfiles("postgresql");
    }

    private static HikariDataSource embedded(DataFolder folder) {
        if (!folder.isInUse()) {
            pool(folder.urlOfFirstStart()).close();
        }
        return pool(folder.url());
    }

    private static Throwable root(Throwable failure) {
        return failure.getCause() == null ? failure : root(failure.getCause());
    }

    private static void refuseEmpty(HikariDataSource source) {
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement();
                ResultSet tables = statement.executeQuery(
                        "select count(*) from information_schema.tables where lower(table_schema) = 'public'")) {
            tables.next();
            if (tables.getInt(1) == 0) {
                source.close();
                throw new UnusableData("The database is empty, but the data folder has been in use with one that was"
                        + " not. Restore the database from a backup.", null);
            }
        } catch (SQLException failure) {
            throw new UnusableData("The database cannot be read: " + failure.getMessage(), failure);
        }
    }
}

package brightseam.check.shell;

import brightseam.check.BrokenLink;
import brightseam.check.StoredRow;
import brightseam.ledger.Entry;
import brightseam.ledger.shell.Projection;
import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.sql.DataSource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.util.FileSystemUtils;

/**
 * The rows that screens read, made anew from the entries in a database of their own that is thrown away afterwards,
 * each projection on a thread of its own.
 */
final class FreshRows implements Consumer<List<StoredRow>>, AutoCloseable {

    /** More than there are projections: each has its own thread. */
    private static final int CONNECTIONS_MAX = 60;
    /** In KiB: what H2 keeps of the fresh tables in memory. */
    private static final int CACHE_KIB = 262_144;

    private final DataSource stored;
    private final Path folder;
    private final HikariDataSource fresh;
    private final List<ReplayThread> threads = new ArrayList<>();
    private final EarlierEntries earlier;

    private FreshRows(DataSource stored, StoredRows rows, Path folder) {
        this.stored = stored;
        this.folder = folder;
        this.fresh = pool(folder);
        FreshProjections.migrations(fresh).migrate();
        this.earlier = new EarlierEntries(rows, new JdbcTemplate(fresh));
        for (Projection projection : FreshProjections.make(JdbcClient.create(fresh))) {
            threads.add(new ReplayThread(projection, fresh));
        }
    }

    /** Makes the empty tables; {@code rows} are the ledger's. */
    static FreshRows make(DataSource stored, StoredRows rows) {
        try {
            return new FreshRows(stored, rows, Files.createTempDirectory("brightseam-check"));
        } catch (IOException failure) {
            throw new UncheckedIOException("no room for fresh rows in the folder for temporary files", failure);
        }
    }

    /** Replays the next entries, in order. Returns as soon as there is room for more. */
    @Override
    public void accept(List<StoredRow> chunk) {
        earlier.provide(chunk);
        List<Entry> entries = chunk.stream().map(StoredRow::entry).toList();
        threads.forEach(thread -> thread.put(entries));
    }

    /** Compares every projection's tables; answers how many rows were looked at. */
    long compare(Consumer<BrokenLink> broken) {
        long rows = 0;
        for (ReplayThread thread : threads) {
            if (thread.end().isPresent()) {
                broken.accept(thread.end().get());
                continue;
            }
            for (String table : thread.projection().tables()) {
                TableCompare compare = new TableCompare(table, stored, fresh);
                rows += compare.run(broken);
            }
        }
        return rows;
    }

    @Override
    public void close() {
        threads.forEach(ReplayThread::end);
        fresh.close();
        try {
            FileSystemUtils.deleteRecursively(folder);
        } catch (IOException failure) {
            throw new UncheckedIOException("the temporary folder " + folder + " cannot be deleted", failure);
        }
    }

    private static HikariDataSource pool(Path folder) {
        HikariConfig config = new HikariConfig();
        config.setPoolName("fresh-rows");
        config.setJdbcUrl("jdbc:h2:file:" + folder.resolve("fresh") + ";CACHE_SIZE=" + CACHE_KIB);
        config.setUsername("sa");
        config.setPassword("");
        config.setMaximumPoolSize(CONNECTIONS_MAX);
        return new HikariDataSource(config);
    }
}

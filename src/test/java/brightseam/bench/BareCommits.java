package brightseam.bench;

import brightseam.app.ShopDatabase;
import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;

/**
 * Plain JDBC on H2 and nothing of ours: inserts of rows with the ledger's columns and indexes, a commit, then
 * {@code CHECKPOINT SYNC}. One thread does it for all callers.
 */
final class BareCommits implements LedgerBench.Contender {

    static final String CONTENT = "{\"text\":\"" + "x".repeat(400) + "\"}";
    private static final String HASH = "0".repeat(64);

    private final HikariDataSource source;
    private final LinkedBlockingQueue<Row> queue = new LinkedBlockingQueue<>();
    private final Thread writer;

    /** Commits at most {@code groupMax} rows that wait at once. */
    BareCommits(Path folder, int groupMax) throws SQLException {
        source = ShopDatabase.pool("jdbc:h2:file:" + folder + "/bare;WRITE_DELAY=0");
        try (Connection connection = source.getConnection(); Statement statement = connection.createStatement()) {
            statement.execute("""
                    create table bare (
                        position bigint primary key, stream varchar(80) not null, version bigint not null,
                        type varchar(80) not null, json varchar(1000000) not null, previous varchar(64) not null,
                        hash varchar(64) not null)
                    """);
            statement.execute("create unique index bare_chain on bare (stream, version desc)");
        }
        writer = Thread.ofPlatform().daemon().start(() -> commit(groupMax));
    }

    private record Row(int caller, long turn, CompletableFuture<Void> done) {}

    @Override
    public void store(int caller, long turn) {
        Row row = new Row(caller, turn, new CompletableFuture<>());
        queue.add(row);
        row.done().join();
    }

    @Override
    public void close() throws InterruptedException {
        writer.interrupt();
        writer.join();
        source.close();
    }

    private void commit(int groupMax) {
        try (Connection connection = source.getConnection();
                PreparedStatement insert = connection.prepareStatement("insert into bare values (?, ?, ?, ?, ?, ?, ?)");
                Statement statement = connection.createStatement()) {
            connection.setAutoCommit(false);
            long position = 0;
            while (true) {
                List<Row> group = new ArrayList<>(List.of(queue.take()));
                queue.drainTo(group, groupMax - 1);
                for (Row row : group) {
                    insert(insert, ++position, row);
                }
                connection.commit();
                statement.execute("checkpoint sync");
                group.forEach(row -> row.done().complete(null));
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        } catch (SQLException failure) {
            throw new IllegalStateException(failure);
        }
    }

    private static void insert(PreparedStatement insert, long position, Row row) throws SQLException {
        insert.setLong(1, position);
        insert.setString(2, "traveller/T-" + row.caller());
        insert.setLong(3, row.turn() + 1);
        insert.setString(4, "signed.1");
        insert.setString(5, CONTENT);
        insert.setString(6, HASH);
        insert.setString(7, HASH);
        insert.executeUpdate();
    }
}

package brightseam.check.shell;

import brightseam.check.StoredRow;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The rows of the ledger in order of position, read by one thread while another works on them. */
public final class StoredRows {

    private static final int ROWS_AT_ONCE = 2_000;
    private static final int AT_ONCE = 200;
    private static final int WAITING_MAX = 4;
    private static final long LOOK_MILLIS = 100;

    private final JdbcClient jdbc;

    /** Reads with {@code jdbc}. */
    public StoredRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** What one reading brought: rows, or why there are none. */
    private record Batch(List<StoredRow> rows, RuntimeException failure) {}

    long count() {
        return jdbc.sql("select count(*) from ledger_entry").query(Long.class).single();
    }

    /** Gives every row to {@code work}, in portions; the next ones are read meanwhile. */
    public void forEach(Consumer<List<StoredRow>> work) {
        BlockingQueue<Batch> waiting = new ArrayBlockingQueue<>(WAITING_MAX);
        AtomicBoolean ended = new AtomicBoolean();
        Thread.ofPlatform().name("ledger-reader").daemon().start(() -> read(waiting, ended));
        try {
            for (Batch batch = waiting.take(); ; batch = waiting.take()) {
                if (batch.failure() != null) {
                    throw batch.failure();
                }
                if (batch.rows().isEmpty()) {
                    return;
                }
                work.accept(batch.rows());
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while the ledger was read", interrupted);
        } finally {
            ended.set(true);
            waiting.clear();
        }
    }

    /** Inserts {@code rows} as they are into the ledger's table of another database, behind {@code batches}. */
    public static void insert(JdbcTemplate batches, List<StoredRow> rows) {
        batches.batchUpdate("""
                insert into ledger_entry (position, stream, version, type, json, previous, hash)
                values (?, ?, ?, ?, ?, ?, ?)
                """, rows, AT_ONCE, (statement, row) -> {
                    statement.setLong(1, row.position());
                    statement.setString(2, row.stream());
                    statement.setLong(3, row.version());
                    statement.setString(4, row.type());
                    statement.setString(5, row.json());
                    statement.setString(6, row.previous());
                    statement.setString(7, row.hash());
                });
    }

    /** The rows of {@code stream} above {@code version} that come before {@code position}. */
    List<StoredRow> ofStream(String stream, long version, long position) {
        return jdbc.sql("""
                        select position, stream, version, type, json, previous, hash from ledger_entry
                        where stream = ? and version > ? and position < ? order by version
                        """)
                .params(stream, version, position).query(StoredRows::row).list();
    }

    /** Nobody interrupts it: the database would lose its file by that. */
    private void read(BlockingQueue<Batch> waiting, AtomicBoolean ended) {
        try {
            long position = Long.MIN_VALUE;
            List<StoredRow> rows;
            do {
                rows = after(position);
                put(waiting, new Batch(rows, null), ended);
                position = rows.isEmpty() ? position : rows.getLast().position();
            } while (!rows.isEmpty() && !ended.get());
        } catch (RuntimeException failure) {
            put(waiting, new Batch(List.of(), failure), ended);
        }
    }

    private static void put(BlockingQueue<Batch> waiting, Batch batch, AtomicBoolean ended) {
        try {
            boolean taken = false;
            while (!taken && !ended.get()) {
                taken = waiting.offer(batch, LOOK_MILLIS, TimeUnit.MILLISECONDS);
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private List<StoredRow> after(long position) {
        return jdbc.sql("""
                        select position, stream, version, type, json, previous, hash from ledger_entry
                        where position > ? order by position fetch first ? rows only
                        """)
                .params(position, ROWS_AT_ONCE).query(StoredRows::row).list();
    }

    private static StoredRow row(ResultSet row, int number) throws SQLException {
        return new StoredRow(row.getLong(1), row.getString(2), row.getLong(3), row.getString(4), row.getString(5),
                row.getString(6), row.getString(7));
    }
}

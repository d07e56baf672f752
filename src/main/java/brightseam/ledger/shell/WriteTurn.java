package brightseam.ledger.shell;

import java.util.function.Supplier;
import javax.sql.DataSource;
import org.springframework.jdbc.core.ConnectionCallback;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The turn to write, where several nodes share one database. It is taken first in a transaction and held to its end,
 * so that positions have no holes, a stream's versions rise by one, and what is visible is always a beginning of the
 * whole: PostgreSQL gives an advisory lock back after the commit can be seen. An embedded database has one writer.
 */
final class WriteTurn {

    /** Nobody else in this database may use it: {@code bright} in ASCII, then 1. */
    private static final long LOCK = 0x6272_6967_6874_0001L;

    private final JdbcTemplate jdbc;
    private final boolean shared;

    private WriteTurn(JdbcTemplate jdbc, boolean shared) {
        this.jdbc = jdbc;
        this.shared = shared;
    }

    /** The turns of the database behind {@code source}. */
    static WriteTurn of(DataSource source) {
        return new WriteTurn(new JdbcTemplate(source), isShared(source));
    }

    /** Whether the database behind {@code source} is one that several nodes may write to. */
    static boolean isShared(DataSource source) {
        return "PostgreSQL".equals(new JdbcTemplate(source).execute((ConnectionCallback<String>)
                connection -> connection.getMetaData().getDatabaseProductName()));
    }

    /** Whether others may write besides this process. */
    boolean isShared() {
        return shared;
    }

    /** Waits for the turn; to be called in a transaction, before anything is read that decides what is written. */
    void take() {
        if (shared) {
            jdbc.query("select pg_advisory_xact_lock(?)", row -> { }, LOCK);
        }
    }

    /**
     * What {@code question} answers once no transaction of an earlier turn is still about to commit: one whose
     * connection was lost may yet do so, and until then it keeps the turn.
     */
    <R> R settled(TransactionTemplate transaction, Supplier<R> question) {
        return shared
                ? transaction.execute(status -> {
                    take();
                    return question.get();
                })
                : question.get();
    }
}

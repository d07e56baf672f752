package brightseam.ledger.shell;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import javax.sql.DataSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The lead of several nodes: whoever holds one advisory lock of PostgreSQL, on a connection that is kept for it. The
 * database gives the lock back when that connection ends, so a killed process loses it at once.
 */
final class LeadLock implements Lead, AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(LeadLock.class);
    /** Nobody else in this database may use it: {@code bright} in ASCII, then 2. */
    private static final long LOCK = 0x6272_6967_6874_0002L;
    private static final long LOOK_MILLIS = 500;
    private static final int ANSWER_SECONDS = 3;

    private final DataSource source;
    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(
            work -> Thread.ofPlatform().daemon().name("lead-lock").unstarted(work));
    private Connection connection;
    private volatile boolean lead;

    /** Tries once at once, so that the first node leads from its start. */
    LeadLock(DataSource source) {
        this.source = source;
        look();
        thread.scheduleWithFixedDelay(this::look, LOOK_MILLIS, LOOK_MILLIS, TimeUnit.MILLISECONDS);
    }

    @Override
    public boolean isLead() {
        return lead;
    }

    /** Gives the lead to whoever asks next. */
    @Override
    public void close() {
        thread.shutdown();
        release();
    }

    private synchronized void look() {
        if (thread.isShutdown()) {
            return;
        }
        try {
            if (connection == null) {
                connection = source.getConnection();
            }
            boolean now = lead ? isAlive() : isTaken();
            if (now && !lead) {
                LOG.warn("this node leads now");
            }
            lead = now;
        } catch (SQLException failure) {
            LOG.warn("whether this node leads cannot be told: {}", failure.getMessage());
            release();
        }
    }

    private boolean isTaken() throws SQLException {
        return asked("select pg_try_advisory_lock(" + LOCK + ")");
    }

    /** Only a lost connection loses the lock. */
    private boolean isAlive() throws SQLException {
        return asked("select true");
    }

    private boolean asked(String question) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.setQueryTimeout(ANSWER_SECONDS);
            try (ResultSet answer = statement.executeQuery(question)) {
                return answer.next() && answer.getBoolean(1);
            }
        }
    }

    /** A pooled connection that goes back would keep the lock: it is unlocked first, or cut. */
    private synchronized void release() {
        boolean held = lead;
        lead = false;
        if (connection == null) {
            return;
        }
        try (Connection last = connection) {
            connection = null;
            if (held) {
                unlock(last);
            }
        } catch (SQLException failure) {
            LOG.debug("the connection of the lead was lost already", failure);
        }
    }

    private static void unlock(Connection last) throws SQLException {
        try (Statement statement = last.createStatement()) {
            statement.setQueryTimeout(ANSWER_SECONDS);
            statement.execute("select pg_advisory_unlock(" + LOCK + ")");
        } catch (SQLException lost) {
            last.abort(Runnable::run);
        }
    }
}

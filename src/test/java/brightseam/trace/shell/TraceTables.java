package brightseam.trace.shell;

import brightseam.ledger.shell.Projection;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The tables of contacts for measurements that need no Spring. */
public final class TraceTables {

    private TraceTables() {}

    /** Keeps them. */
    public static Projection of(JdbcClient jdbc) {
        return new TraceRows(jdbc);
    }
}

package brightseam.ledger.shell;

import java.sql.Connection;
import java.sql.SQLException;
import org.h2.api.Trigger;

/** H2's trigger that refuses to change or remove an entry. Public only because H2 makes it by its name. */
public final class AppendOnly implements Trigger {

    /** Refuses, always. */
    @Override
    public void fire(Connection connection, Object[] before, Object[] after) throws SQLException {
        throw new SQLException("the ledger is append-only: " + (after == null ? "DELETE" : "UPDATE") + " refused");
    }
}

package brightseam.ledger.shell;

import javax.sql.DataSource;
import org.springframework.jdbc.core.ConnectionCallback;
import org.springframework.jdbc.core.JdbcTemplate;

/** Brings what was committed onto the disk, where the database has not done so by itself. */
interface ForcedWrite {

    /** Returns once everything committed before would survive a power cut; throws where that failed. */
    void force();

    /**
     * The way of the database behind {@code source}. H2 acknowledges a commit before the disk has it, so it is told
     * {@code CHECKPOINT SYNC} outside of any transaction; PostgreSQL with {@code synchronous_commit=on} has forced it.
     *
     * @throws IllegalStateException for any other database
     */
    static ForcedWrite of(DataSource source) {
        JdbcTemplate jdbc = new JdbcTemplate(source);
        return isNeeded(source) ? () -> jdbc.execute("checkpoint sync") : () -> {};
    }

    /**
     * Whether the database behind {@code source} acknowledges a commit before the disk has it.
     *
     * @throws IllegalStateException for a database of which that is not known
     */
    static boolean isNeeded(DataSource source) {
        String product = new JdbcTemplate(source).execute((ConnectionCallback<String>)
                connection -> connection.getMetaData().getDatabaseProductName());
        return switch (String.valueOf(product)) {
            case "H2" -> true;
            case "PostgreSQL" -> false;
            default -> throw new IllegalStateException("no way known to force writes of " + product);
        };
    }
}

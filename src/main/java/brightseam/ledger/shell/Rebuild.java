package brightseam.ledger.shell;

import brightseam.ledger.Entry;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.sql.DataSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** Makes the projections' tables anew from the ledger alone. Nothing is appended meanwhile. */
@Service
public final class Rebuild {

    private static final int ENTRIES_AT_ONCE = 1_000;

    private final StoredLedger ledger;
    private final List<Projection> projections;
    private final TransactionTemplate transaction;
    private final JdbcClient jdbc;
    private final WriteTurn turn;

    Rebuild(
            StoredLedger ledger, List<Projection> projections, PlatformTransactionManager transactions,
            JdbcClient jdbc, DataSource source) {
        this.ledger = ledger;
        this.projections = List.copyOf(projections);
        this.transaction = new TransactionTemplate(transactions);
        this.jdbc = jdbc;
        this.turn = WriteTurn.of(source);
    }

    /** How many entries were replayed, and how many rows each projected table then has. */
    public record Counts(long entries, Map<String, Long> rowsByTable) {}

    /** What a rebuild would change in one table: rows that are missing now, and rows that should not be there. */
    public record Difference(String table, List<String> missing, List<String> surplus) {}

    /** Empties every projection's tables and replays the whole ledger, in one transaction. */
    public Counts rebuild() {
        Map<String, Long> rows = new LinkedHashMap<>();
        long[] entries = new long[1];
        ledger.alone(() -> transaction.executeWithoutResult(status -> {
            turn.take();
            entries[0] = replay();
            tables().forEach(table -> rows.put(table, count(table)));
        }));
        return new Counts(entries[0], rows);
    }

    /** What {@link #rebuild()} would change; changes nothing. Empty where the tables are what the ledger says. */
    public List<Difference> compare() {
        List<Difference> differences = new ArrayList<>();
        ledger.alone(() -> transaction.executeWithoutResult(status -> {
            status.setRollbackOnly();
            turn.take();
            Map<String, List<String>> before = dump();
            replay();
            Map<String, List<String>> after = dump();
            tables().stream()
                    .map(table -> new Difference(
                            table, without(after.get(table), before.get(table)),
                            without(before.get(table), after.get(table))))
                    .filter(difference -> !difference.missing().isEmpty() || !difference.surplus().isEmpty())
                    .forEach(differences::add);
        }));
        return differences;
    }

    private long replay() {
        tables().reversed().forEach(table -> jdbc.sql("delete from " + table).update());
        long position = 0;
        List<Entry> entries = ledger.readAllAfter(position, ENTRIES_AT_ONCE);
        while (!entries.isEmpty()) {
            entries.forEach(entry -> projections.forEach(projection -> projection.apply(entry)));
            position = entries.getLast().position();
            entries = ledger.readAllAfter(position, ENTRIES_AT_ONCE);
        }
        return position;
    }

    private Map<String, List<String>> dump() {
        Map<String, List<String>> rows = new LinkedHashMap<>();
        tables().forEach(table -> rows.put(table, jdbc.sql("select * from " + table).query().listOfRows().stream()
                .map(Object::toString)
                .sorted()
                .toList()));
        return rows;
    }

    private static List<String> without(List<String> rows, List<String> others) {
        Map<String, Integer> spare = new HashMap<>();
        others.forEach(row -> spare.merge(row, 1, Integer::sum));
        return rows.stream().filter(row -> spare.merge(row, -1, Integer::sum) < 0).toList();
    }

    private long count(String table) {
        return jdbc.sql("select count(*) from " + table).query(Long.class).single();
    }

    /** In the order that the projections name them, so that a table follows those that it refers to. */
    private List<String> tables() {
        return projections.stream()
                .flatMap(projection -> projection.tables().stream())
                .peek(Rebuild::refuseOddName)
                .toList();
    }

    private static void refuseOddName(String table) {
        if (!table.matches("[a-z0-9_]+") || table.startsWith("ledger_")) {
            throw new IllegalStateException("not a projection's table: " + table);
        }
    }
}

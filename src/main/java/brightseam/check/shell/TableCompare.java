package brightseam.check.shell;

import brightseam.check.BrokenLink;
import brightseam.seal.Hash;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import javax.sql.DataSource;

/**
 * Compares one table in two databases without its order: rows are hashed into buckets, and only rows of buckets that
 * differ are held in memory.
 */
final class TableCompare {

    private static final int BUCKETS = 4_096;
    private static final int FETCH = 1_000;
    private static final int NAMED_MAX = 3;
    private static final int LOOKED_AT_MAX = 64;

    private final String table;
    private final DataSource stored;
    private final DataSource fresh;

    TableCompare(String table, DataSource stored, DataSource fresh) {
        if (!table.matches("[a-z0-9_]+")) {
            throw new IllegalArgumentException("not a table's name: " + table);
        }
        this.table = table;
        this.stored = stored;
        this.fresh = fresh;
    }

    @FunctionalInterface
    private interface RowTaker {
        void take(String row);
    }

    /** Tells what differs; answers how many rows there are. */
    long run(Consumer<BrokenLink> broken) {
        long[] count = new long[1];
        long[] there = sums(stored, count);
        long[] due = sums(fresh, new long[1]);
        boolean[] differs = new boolean[BUCKETS];
        int named = 0;
        for (int bucket = 0; bucket < BUCKETS && named < LOOKED_AT_MAX; bucket++) {
            int at = bucket * 3;
            differs[bucket] = !Arrays.equals(there, at, at + 3, due, at, at + 3);
            named += differs[bucket] ? 1 : 0;
        }
        if (named > 0) {
            tell(differs, broken);
        }
        return count[0];
    }

    private long[] sums(DataSource source, long[] count) {
        long[] sums = new long[BUCKETS * 3];
        forEachRow(source, row -> {
            ByteBuffer hash = hash(row);
            int at = bucket(hash) * 3;
            sums[at]++;
            sums[at + 1] += hash.getLong(8);
            sums[at + 2] += hash.getLong(16);
            count[0]++;
        });
        return sums;
    }

    private void tell(boolean[] differs, Consumer<BrokenLink> broken) {
        Map<String, Integer> balance = new TreeMap<>();
        forEachRow(stored, row -> {
            if (differs[bucket(hash(row))]) {
                balance.merge(row, 1, Integer::sum);
            }
        });
        forEachRow(fresh, row -> {
            if (differs[bucket(hash(row))]) {
                balance.merge(row, -1, Integer::sum);
            }
        });
        balance.entrySet().stream().filter(row -> row.getValue() < 0).limit(NAMED_MAX)
                .forEach(row -> broken.accept(new BrokenLink("the table " + table,
                        "lacks a row that the entries lead to", row.getKey(), "no such row")));
        balance.entrySet().stream().filter(row -> row.getValue() > 0).limit(NAMED_MAX)
                .forEach(row -> broken.accept(new BrokenLink("the table " + table,
                        "has a row that the entries do not lead to", "no such row", row.getKey())));
    }

    private void forEachRow(DataSource source, RowTaker taker) {
        try (Connection connection = source.getConnection(); Statement statement = connection.createStatement()) {
            boolean lazy = connection.getMetaData().getDatabaseProductName().equals("H2");
            if (lazy) {
                statement.execute("set lazy_query_execution 1");
            }
            connection.setAutoCommit(false);
            statement.setFetchSize(FETCH);
            try (ResultSet rows = statement.executeQuery("select * from " + table)) {
                take(rows, taker);
            }
            connection.rollback();
            connection.setAutoCommit(true);
            if (lazy) {
                statement.execute("set lazy_query_execution 0");
            }
        } catch (SQLException failure) {
            throw new IllegalStateException("the table " + table + " cannot be read: " + failure.getMessage(), failure);
        }
    }

    private static void take(ResultSet rows, RowTaker taker) throws SQLException {
        int columns = rows.getMetaData().getColumnCount();
        String[] names = new String[columns];
        for (int i = 0; i < columns; i++) {
            names[i] = rows.getMetaData().getColumnName(i + 1).toLowerCase(Locale.ROOT);
        }
        while (rows.next()) {
            taker.take(text(rows, names));
        }
    }

    private static String text(ResultSet rows, String[] names) throws SQLException {
        Map<String, String> cells = new TreeMap<>();
        for (int i = 0; i < names.length; i++) {
            cells.put(names[i], text(rows.getObject(i + 1)));
        }
        return cells.toString();
    }

    private static String text(Object value) {
        return switch (value) {
            case null -> "null";
            case BigDecimal number -> number.stripTrailingZeros().toPlainString();
            case byte[] bytes -> HexFormat.of().formatHex(bytes);
            default -> "'" + value + "'";
        };
    }

    private static ByteBuffer hash(String row) {
        return ByteBuffer.wrap(Hash.sha256(row.getBytes(StandardCharsets.UTF_8)).bytes());
    }

    private static int bucket(ByteBuffer hash) {
        return (hash.getInt(0) & Integer.MAX_VALUE) % BUCKETS;
    }
}

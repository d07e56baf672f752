package brightseam.move.shell;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Writer;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import tools.jackson.core.JacksonException;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Rows of one table as lines of JSON, a column a name; bytes are {@code {"base64":"…"}}. */
final class TableLines {

    private static final JsonMapper MAPPER = JsonMapper.builder().build();
    private static final TypeReference<LinkedHashMap<String, Object>> ROW = new TypeReference<>() {};
    private static final String BYTES = "base64";
    private static final int FETCH = 500;
    private static final String NAME = "[a-z][a-z0-9_]{0,60}";

    private TableLines() {}

    /** Writes every row of {@code table}; answers how many. */
    static long write(DataSource source, String table, Writer out) throws IOException {
        long rows = 0;
        try (Connection connection = source.getConnection(); Statement statement = connection.createStatement()) {
            connection.setAutoCommit(false);
            statement.setFetchSize(FETCH);
            try (ResultSet found = statement.executeQuery("select * from " + name(table))) {
                while (found.next()) {
                    out.write(MAPPER.writeValueAsString(row(found)));
                    out.write('\n');
                    rows++;
                }
            }
            connection.rollback();
            connection.setAutoCommit(true);
            return rows;
        } catch (SQLException failure) {
            throw new IOException("the table " + table + " cannot be read: " + failure.getMessage(), failure);
        }
    }

    /** Inserts every line of {@code in} into {@code table}, in the transaction of {@code connection}. */
    static long read(Connection connection, String table, BufferedReader in) throws IOException {
        long rows = 0;
        try {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                insert(connection, table, MAPPER.readValue(line, ROW));
                rows++;
            }
            return rows;
        } catch (SQLException | JacksonException failure) {
            throw new IOException("line " + (rows + 1) + " of the table " + table + " does not fit: "
                    + failure.getMessage(), failure);
        }
    }

    private static void insert(Connection connection, String table, Map<String, Object> row) throws SQLException {
        List<String> columns = List.copyOf(row.keySet());
        String sql = "insert into " + name(table) + " ("
                + columns.stream().map(TableLines::name).collect(Collectors.joining(", ")) + ") values ("
                + columns.stream().map(column -> "?").collect(Collectors.joining(", ")) + ")";
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            for (int i = 0; i < columns.size(); i++) {
                statement.setObject(i + 1, value(row.get(columns.get(i))));
            }
            statement.executeUpdate();
        }
    }

    private static Map<String, Object> row(ResultSet found) throws SQLException {
        Map<String, Object> row = new LinkedHashMap<>();
        for (int i = 1; i <= found.getMetaData().getColumnCount(); i++) {
            Object value = found.getObject(i);
            row.put(found.getMetaData().getColumnName(i).toLowerCase(Locale.ROOT), value instanceof byte[] bytes
                    ? Map.of(BYTES, Base64.getEncoder().encodeToString(bytes)) : value);
        }
        return row;
    }

    private static Object value(Object read) {
        return read instanceof Map<?, ?> bytes ? Base64.getDecoder().decode(String.valueOf(bytes.get(BYTES))) : read;
    }

    private static String name(String name) {
        if (!name.matches(NAME)) {
            throw new IllegalArgumentException("not a name of a table or column: " + name);
        }
        return name;
    }
}

package brightseam.kit.shell;

import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kit.Kit;
import brightseam.kit.KitLine;
import brightseam.ledger.shell.StateRows;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The tables {@code kit_row} and {@code kit_line_row}. Lines are only ever added. */
final class KitRows implements StateRows<Kit> {

    private static final String SELECT = """
            select kit_id, title, session_due, closed
            from kit_row
            """;

    private static final String INSERT = """
            insert into kit_row (kit_id, title, session_due, closed)
            values (:kit, :title, :due, :closed)
            """;

    private static final String UPDATE = """
            update kit_row
            set title = :title, session_due = :due, closed = :closed
            where kit_id = :kit
            """;

    private final JdbcClient jdbc;

    KitRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public List<String> tables() {
        return List.of("kit_row", "kit_line_row");
    }

    @Override
    public Optional<Kit> find(String identity) {
        return jdbc.sql(SELECT + "where kit_id = :kit")
                .param("kit", identity)
                .query(KitRows::kitWithoutLines)
                .optional()
                .map(this::withLines);
    }

    List<Kit> open() {
        List<Kit> kits = jdbc.sql(SELECT + "where not closed order by kit_id")
                .query(KitRows::kitWithoutLines)
                .list();
        return kits.stream().map(this::withLines).toList();
    }

    @Override
    public void put(Optional<Kit> before, Kit after, long position) {
        jdbc.sql(before.isPresent() ? UPDATE : INSERT)
                .param("kit", after.id().value())
                .param("title", after.title())
                .param("due", after.sessionDue().map(Instant::toString).orElse(null))
                .param("closed", after.closed())
                .update();
        List<KitLine> known = before.map(Kit::lines).orElse(List.of());
        after.lines().stream().filter(line -> !known.contains(line)).forEach(line -> add(after.id(), line));
    }

    private void add(KitId kit, KitLine line) {
        jdbc.sql("""
                        insert into kit_line_row (kit_id, line_number, part_number, description, drawing_revision,
                            quantity_count, procedure_id, heat_id)
                        values (:kit, :number, :part, :description, :revision, :quantity, :procedure, :heat)
                        """)
                .param("kit", kit.value())
                .param("number", line.lineNumber())
                .param("part", line.partNumber())
                .param("description", line.description())
                .param("revision", line.drawingRevision())
                .param("quantity", line.quantity())
                .param("procedure", line.procedure())
                .param("heat", line.heat().map(HeatId::value).orElse(null))
                .update();
    }

    private Kit withLines(Kit kit) {
        List<KitLine> lines = jdbc.sql("""
                        select line_number, part_number, description, drawing_revision, quantity_count,
                               procedure_id, heat_id
                        from kit_line_row
                        where kit_id = :kit
                        order by line_number
                        """)
                .param("kit", kit.id().value())
                .query(KitRows::line)
                .list();
        return new Kit(kit.id(), kit.title(), kit.sessionDue(), lines, kit.closed());
    }

    private static Kit kitWithoutLines(ResultSet row, int number) throws SQLException {
        return new Kit(
                new KitId(row.getString("kit_id")),
                row.getString("title"),
                Optional.ofNullable(row.getString("session_due")).map(Instant::parse),
                List.of(),
                row.getBoolean("closed"));
    }

    private static KitLine line(ResultSet row, int number) throws SQLException {
        return new KitLine(
                row.getInt("line_number"),
                row.getString("part_number"),
                row.getString("description"),
                row.getString("drawing_revision"),
                row.getInt("quantity_count"),
                row.getString("procedure_id"),
                Optional.ofNullable(row.getString("heat_id")).map(HeatId::new));
    }
}

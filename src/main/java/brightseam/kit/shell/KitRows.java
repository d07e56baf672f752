package brightseam.kit.shell;

import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kit.Kit;
import brightseam.kit.KitLine;
import brightseam.kit.SetNeed;
import brightseam.ledger.shell.StateRows;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The tables {@code kit_row}, {@code kit_line_row} and {@code kit_need_row}. Lines are only ever added. */
final class KitRows implements StateRows<Kit> {

    private static final String SELECT = """
            select kit_id, title, session_due, needs_set, closed
            from kit_row
            """;

    private static final String INSERT = """
            insert into kit_row (kit_id, title, session_due, needs_set, closed)
            values (:kit, :title, :due, :needs, :closed)
            """;

    private static final String UPDATE = """
            update kit_row
            set title = :title, session_due = :due, needs_set = :needs, closed = :closed
            where kit_id = :kit
            """;

    private final JdbcClient jdbc;

    KitRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public List<String> tables() {
        return List.of("kit_row", "kit_line_row", "kit_need_row");
    }

    @Override
    public Optional<Kit> find(String identity) {
        return jdbc.sql(SELECT + "where kit_id = :kit")
                .param("kit", identity)
                .query(KitRows::kitWithoutLines)
                .optional()
                .map(this::whole);
    }

    List<Kit> open() {
        List<Kit> kits = jdbc.sql(SELECT + "where not closed order by kit_id")
                .query(KitRows::kitWithoutLines)
                .list();
        return kits.stream().map(this::whole).toList();
    }

    @Override
    public void put(Optional<Kit> before, Kit after, long position) {
        jdbc.sql(before.isPresent() ? UPDATE : INSERT)
                .param("kit", after.id().value())
                .param("title", after.title())
                .param("due", after.sessionDue().map(Instant::toString).orElse(null))
                .param("needs", after.needs().isPresent())
                .param("closed", after.closed())
                .update();
        List<KitLine> known = before.map(Kit::lines).orElse(List.of());
        after.lines().stream().filter(line -> !known.contains(line)).forEach(line -> add(after.id(), line));
        if (!before.map(Kit::needs).equals(Optional.of(after.needs()))) {
            jdbc.sql("delete from kit_need_row where kit_id = :kit").param("kit", after.id().value()).update();
            List<SetNeed> needs = after.needs().orElse(List.of());
            IntStream.range(0, needs.size()).forEach(i -> add(after.id(), i + 1, needs.get(i)));
        }
    }

    private void add(KitId kit, int number, SetNeed need) {
        jdbc.sql("""
                        insert into kit_need_row (kit_id, need_number, type, title, need_count)
                        values (:kit, :number, :type, :title, :count)
                        """)
                .param("kit", kit.value())
                .param("number", number)
                .param("type", need.type())
                .param("title", need.title())
                .param("count", need.count())
                .update();
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

    private Kit whole(Kit kit) {
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
        return new Kit(kit.id(), kit.title(), kit.sessionDue(), lines, kit.needs().map(any -> needs(kit.id())),
                kit.closed());
    }

    private List<SetNeed> needs(KitId kit) {
        return jdbc.sql("select type, title, need_count from kit_need_row where kit_id = :kit order by need_number")
                .param("kit", kit.value())
                .query((row, number) -> new SetNeed(
                        row.getString("type"), row.getString("title"), row.getInt("need_count")))
                .list();
    }

    private static Kit kitWithoutLines(ResultSet row, int number) throws SQLException {
        return new Kit(
                new KitId(row.getString("kit_id")),
                row.getString("title"),
                Optional.ofNullable(row.getString("session_due")).map(Instant::parse),
                List.of(),
                row.getBoolean("needs_set") ? Optional.of(List.of()) : Optional.empty(),
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

package brightseam.trace.shell;

import brightseam.kernel.BinId;
import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.procedure.BinClass;
import brightseam.trace.PieceNumbers;
import brightseam.trace.Whereabouts;
import brightseam.traveller.PartIdentity;
import brightseam.traveller.Phase;
import brightseam.traveller.Placement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The table {@code trace_traveller}. */
final class WhereaboutsRows {

    /** The columns that {@link #whereabouts} reads, of the table under the name {@code t}. */
    static final String COLUMNS = """
            t.traveller_id, t.parent_id, t.kit_id, t.heat_id, t.part_number, t.part_description, t.drawing_revision,
            t.pieces, t.phase, t.quarantine, t.suspect, t.bin_id, t.bin_class, t.bin_closed, t.step_id
            """;

    private final JdbcClient jdbc;

    WhereaboutsRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Optional<Whereabouts> find(TravellerId traveller) {
        return jdbc.sql("select " + COLUMNS + " from trace_traveller t where t.traveller_id = ?")
                .param(traveller.value()).query(WhereaboutsRows::whereabouts).optional();
    }

    List<Whereabouts> children(TravellerId parent) {
        return jdbc.sql("select " + COLUMNS + " from trace_traveller t where t.parent_id = ? order by t.traveller_id")
                .param(parent.value()).query(WhereaboutsRows::whereabouts).list();
    }

    List<TravellerId> suspects() {
        return jdbc.sql("select traveller_id from trace_traveller where suspect = true order by traveller_id")
                .query(String.class).list().stream().map(TravellerId::new).toList();
    }

    void insert(Whereabouts now, long position) {
        jdbc.sql("""
                insert into trace_traveller (parent_id, kit_id, heat_id, part_number, part_description,
                    drawing_revision, bin_position, pieces, phase, quarantine, suspect, bin_id, bin_class, bin_closed,
                    step_id, traveller_id)
                values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
                """)
                .param(now.parent().map(TravellerId::value).orElse(null))
                .param(now.kit().value())
                .param(now.heat().value())
                .params(now.part().partNumber(), now.part().description(), now.part().drawingRevision())
                .param(position)
                .params(changing(now))
                .update();
    }

    void update(Whereabouts now) {
        jdbc.sql("""
                update trace_traveller
                set pieces = ?, phase = ?, quarantine = ?, suspect = ?, bin_id = ?, bin_class = ?, bin_closed = ?,
                    step_id = ?
                where traveller_id = ?
                """).params(changing(now)).update();
    }

    /** Remembers that the pieces are in the bin that they were put into at {@code position}. */
    void putInBin(TravellerId traveller, long position) {
        jdbc.sql("update trace_traveller set bin_position = ? where traveller_id = ?")
                .params(position, traveller.value()).update();
    }

    static Whereabouts whereabouts(ResultSet row, int number) throws SQLException {
        Optional<String> bin = Optional.ofNullable(row.getString("bin_id"));
        Optional<Placement> placement = bin.isEmpty() ? Optional.empty() : Optional.of(new Placement(
                new BinId(bin.get()), BinClass.valueOf(row.getString("bin_class")), row.getBoolean("bin_closed")));
        return new Whereabouts(new TravellerId(row.getString("traveller_id")),
                Optional.ofNullable(row.getString("parent_id")).map(TravellerId::new),
                new KitId(row.getString("kit_id")), new HeatId(row.getString("heat_id")),
                new PartIdentity(row.getString("part_number"), row.getString("part_description"),
                        row.getString("drawing_revision")),
                PieceNumbers.read(row.getString("pieces")), Phase.valueOf(row.getString("phase")),
                row.getBoolean("quarantine"), row.getBoolean("suspect"), placement,
                Optional.ofNullable(row.getString("step_id")).map(StepId::new));
    }

    private static Object[] changing(Whereabouts now) {
        return new Object[] {
            PieceNumbers.write(now.pieces()), now.phase().name(), now.quarantine(), now.suspect(),
            now.bin().map(where -> where.bin().value()).orElse(null),
            now.bin().map(where -> where.binClass().name()).orElse(null),
            now.bin().map(Placement::closed).orElse(null),
            now.step().map(StepId::value).orElse(null), now.traveller().value()
        };
    }
}

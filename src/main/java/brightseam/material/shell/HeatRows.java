package brightseam.material.shell;

import brightseam.kernel.HeatId;
import brightseam.ledger.shell.StateRows;
import brightseam.material.Heat;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The table {@code heat_row}. */
final class HeatRows implements StateRows<Heat> {

    private static final String SELECT = """
            select heat_id, grade, form, dimensions, maker, certificate_number, received_at, hold_reason
            from heat_row
            """;

    private static final String INSERT = """
            insert into heat_row (heat_id, grade, form, dimensions, maker, certificate_number, received_at, hold_reason)
            values (:heat, :grade, :form, :dimensions, :maker, :certificate, :received, :hold)
            """;

    private static final String UPDATE = """
            update heat_row
            set grade = :grade, form = :form, dimensions = :dimensions, maker = :maker,
                certificate_number = :certificate, received_at = :received, hold_reason = :hold
            where heat_id = :heat
            """;

    private final JdbcClient jdbc;

    HeatRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public List<String> tables() {
        return List.of("heat_row");
    }

    @Override
    public Optional<Heat> find(String identity) {
        return jdbc.sql(SELECT + "where heat_id = :heat")
                .param("heat", identity)
                .query(HeatRows::heat)
                .optional();
    }

    List<Heat> all() {
        return jdbc.sql(SELECT + "order by heat_id").query(HeatRows::heat).list();
    }

    @Override
    public void put(Optional<Heat> before, Heat after, long position) {
        jdbc.sql(before.isPresent() ? UPDATE : INSERT)
                .param("heat", after.id().value())
                .param("grade", after.grade())
                .param("form", after.form())
                .param("dimensions", after.dimensions())
                .param("maker", after.maker())
                .param("certificate", after.certificateNumber())
                .param("received", after.receivedAt().toString())
                .param("hold", after.holdReason().orElse(null))
                .update();
    }

    private static Heat heat(ResultSet row, int number) throws SQLException {
        return new Heat(
                new HeatId(row.getString("heat_id")),
                row.getString("grade"),
                row.getString("form"),
                row.getString("dimensions"),
                row.getString("maker"),
                row.getString("certificate_number"),
                Instant.parse(row.getString("received_at")),
                Optional.ofNullable(row.getString("hold_reason")));
    }
}

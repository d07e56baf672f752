package brightseam.supply.shell;

import brightseam.kernel.ContactKind;
import brightseam.kernel.SupplyId;
import brightseam.ledger.shell.StateRows;
import brightseam.procedure.Surface;
import brightseam.supply.Standing;
import brightseam.supply.Supply;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The table {@code supply_row}. */
final class SupplyRows implements StateRows<Supply> {

    private static final String SELECT = """
            select supply_id, kind, type, title, lot, maker, last_day, touches_uncleaned, touches_cleaned, standing,
                contamination
            from supply_row
            """;

    private static final String INSERT = """
            insert into supply_row (supply_id, kind, type, title, lot, maker, last_day, touches_uncleaned,
                touches_cleaned, standing, contamination)
            values (:supply, :kind, :type, :title, :lot, :maker, :last, :uncleaned, :cleaned, :standing, :contamination)
            """;

    private static final String UPDATE = """
            update supply_row
            set kind = :kind, type = :type, title = :title, lot = :lot, maker = :maker, last_day = :last,
                touches_uncleaned = :uncleaned, touches_cleaned = :cleaned, standing = :standing,
                contamination = :contamination
            where supply_id = :supply
            """;

    private final JdbcClient jdbc;

    SupplyRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public List<String> tables() {
        return List.of("supply_row");
    }

    @Override
    public Optional<Supply> find(String identity) {
        return jdbc.sql(SELECT + "where supply_id = :supply")
                .param("supply", identity)
                .query(SupplyRows::supply)
                .optional();
    }

    List<Supply> all() {
        return jdbc.sql(SELECT + "order by supply_id")
                .query(SupplyRows::supply)
                .list();
    }

    @Override
    public void put(Optional<Supply> before, Supply after, long position) {
        jdbc.sql(before.isPresent() ? UPDATE : INSERT)
                .param("supply", after.id().value())
                .param("kind", after.kind().name())
                .param("type", after.type())
                .param("title", after.title())
                .param("lot", after.lot())
                .param("maker", after.maker())
                .param("last", after.lastDay().orElse(null))
                .param("uncleaned", after.mayTouch().contains(Surface.UNCLEANED))
                .param("cleaned", after.mayTouch().contains(Surface.CLEANED))
                .param("standing", after.standing().name())
                .param("contamination", after.contamination().orElse(null))
                .update();
    }

    private static Supply supply(ResultSet row, int number) throws SQLException {
        Set<Surface> mayTouch = EnumSet.noneOf(Surface.class);
        if (row.getBoolean("touches_uncleaned")) {
            mayTouch.add(Surface.UNCLEANED);
        }
        if (row.getBoolean("touches_cleaned")) {
            mayTouch.add(Surface.CLEANED);
        }
        return new Supply(
                new SupplyId(row.getString("supply_id")),
                ContactKind.valueOf(row.getString("kind")),
                row.getString("type"),
                row.getString("title"),
                row.getString("lot"),
                row.getString("maker"),
                Optional.ofNullable(row.getObject("last_day", LocalDate.class)),
                mayTouch,
                Standing.valueOf(row.getString("standing")),
                Optional.ofNullable(row.getString("contamination")));
    }
}

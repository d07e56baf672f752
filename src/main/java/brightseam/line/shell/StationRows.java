package brightseam.line.shell;

import brightseam.kernel.StationId;
import brightseam.ledger.shell.StateRows;
import brightseam.line.Station;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The table {@code station_row}. */
final class StationRows implements StateRows<Station> {

    private static final String SELECT = """
            select station_id, station_class, title, needs_qualification, out_of_use_reason
            from station_row
            """;

    private static final String INSERT = """
            insert into station_row (station_id, station_class, title, needs_qualification, out_of_use_reason)
            values (:station, :class, :title, :qualification, :reason)
            """;

    private static final String UPDATE = """
            update station_row
            set station_class = :class, title = :title, needs_qualification = :qualification,
                out_of_use_reason = :reason
            where station_id = :station
            """;

    private final JdbcClient jdbc;

    StationRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public List<String> tables() {
        return List.of("station_row");
    }

    @Override
    public Optional<Station> find(String identity) {
        return jdbc.sql(SELECT + "where station_id = :station")
                .param("station", identity)
                .query(StationRows::station)
                .optional();
    }

    List<Station> all() {
        return jdbc.sql(SELECT + "order by station_id")
                .query(StationRows::station)
                .list();
    }

    @Override
    public void put(Optional<Station> before, Station after, long position) {
        jdbc.sql(before.isPresent() ? UPDATE : INSERT)
                .param("station", after.id().value())
                .param("class", after.stationClass())
                .param("title", after.title())
                .param("qualification", after.needsQualification())
                .param("reason", after.outOfUseReason().orElse(null))
                .update();
    }

    private static Station station(ResultSet row, int number) throws SQLException {
        return new Station(
                new StationId(row.getString("station_id")),
                row.getString("station_class"),
                row.getString("title"),
                row.getBoolean("needs_qualification"),
                Optional.ofNullable(row.getString("out_of_use_reason")));
    }
}

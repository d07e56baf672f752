package brightseam.chamber.shell;

import brightseam.chamber.ChamberEvent;
import brightseam.chamber.ConsumptionReport;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.ledger.Entry;
import brightseam.ledger.shell.Projection;
import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Which chambers there are, and what their sessions used: {@code chamber_row}, {@code argon_used_row}. */
final class ChamberRows implements Projection {

    private final JdbcClient jdbc;

    ChamberRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public List<String> tables() {
        return List.of("chamber_row", "argon_used_row");
    }

    @Override
    public void apply(Entry entry) {
        if (!ChamberStreams.isMine(entry)) {
            return;
        }
        switch (ChamberStreams.KIND.codec().read(entry)) {
            case ChamberEvent.Registered first -> jdbc.sql("insert into chamber_row (station_id) values (:station)")
                    .param("station", first.station().value()).update();
            case ChamberEvent.ArgonUsed used -> insert(used, entry.position());
            case ChamberEvent other -> { }
        }
    }

    /** The registered chambers, sorted by label. */
    List<StationId> stations() {
        return jdbc.sql("select station_id from chamber_row order by station_id").query(String.class).list().stream()
                .map(StationId::new).toList();
    }

    /** What the last {@code limit} sessions of a chamber used, latest first. */
    List<ArgonUse> used(StationId station, int limit) {
        return jdbc.sql("""
                        select session_id, counted_at, forecast_litres, by_content_litres, by_flow_litres,
                            unproven_seconds, sources
                        from argon_used_row
                        where station_id = :station
                        order by position desc
                        fetch first :limit rows only
                        """)
                .param("station", station.value()).param("limit", limit)
                .query((row, number) -> use(row)).list();
    }

    private void insert(ChamberEvent.ArgonUsed event, long position) {
        ConsumptionReport report = event.report();
        jdbc.sql("""
                        insert into argon_used_row (station_id, session_id, counted_at, forecast_litres,
                            by_content_litres, by_flow_litres, unproven_seconds, sources, position)
                        values (:station, :session, :at, :forecast, :content, :flow, :unproven, :sources, :position)
                        """)
                .param("station", event.station().value())
                .param("session", report.session().value())
                .param("at", event.origin().at().wall().toString())
                .param("forecast", report.forecastStandardLitres().toPlainString())
                .param("content", report.byContentStandardLitres().map(BigDecimal::toPlainString).orElse(null))
                .param("flow", report.byFlowStandardLitres().map(BigDecimal::toPlainString).orElse(null))
                .param("unproven", report.unprovenSeconds())
                .param("sources", report.sources().stream()
                        .map(use -> use.supply() + " " + use.standardLitres().toPlainString())
                        .collect(Collectors.joining("\n")))
                .param("position", position)
                .update();
    }

    private static ArgonUse use(ResultSet row) throws SQLException {
        return new ArgonUse(Instant.parse(row.getString("counted_at")), new ConsumptionReport(
                new SessionId(row.getString("session_id")),
                new BigDecimal(row.getString("forecast_litres")),
                Optional.ofNullable(row.getString("by_content_litres")).map(BigDecimal::new),
                Optional.ofNullable(row.getString("by_flow_litres")).map(BigDecimal::new),
                row.getLong("unproven_seconds"),
                Arrays.stream(row.getString("sources").split("\n")).filter(line -> !line.isEmpty())
                        .map(ChamberRows::source).toList()));
    }

    private static ConsumptionReport.SourceUse source(String line) {
        String[] parts = line.split(" ");
        return new ConsumptionReport.SourceUse(new SupplyId(parts[0]), new BigDecimal(parts[1]));
    }
}

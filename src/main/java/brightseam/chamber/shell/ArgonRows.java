package brightseam.chamber.shell;

import brightseam.chamber.ArgonEvent;
import brightseam.chamber.ArgonReading;
import brightseam.kernel.Moment;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.ledger.Entry;
import brightseam.ledger.shell.Projection;
import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Which sources of argon there are, what was read off them and what they fed: {@code argon_row},
 * {@code argon_reading_row}, {@code argon_connection_row}.
 */
final class ArgonRows implements Projection {

    /** A stretch of time in which a source fed a chamber, on the elapsed time line. */
    record Span(SupplyId supply, long fromMillis, long toMillis) {}

    private final JdbcClient jdbc;

    ArgonRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public List<String> tables() {
        return List.of("argon_row", "argon_reading_row", "argon_connection_row");
    }

    @Override
    public void apply(Entry entry) {
        if (!ArgonStreams.isMine(entry)) {
            return;
        }
        switch (ArgonStreams.KIND.codec().read(entry)) {
            case ArgonEvent.Delivered first -> {
                jdbc.sql("insert into argon_row (supply_id) values (:supply)")
                        .param("supply", first.supply().value()).update();
                first.reading().ifPresent(reading -> insert(first.supply(), reading, false, entry.position()));
            }
            case ArgonEvent.Read read -> insert(read.supply(), read.reading(), read.corrects(), entry.position());
            case ArgonEvent.Connected on -> jdbc.sql("""
                            insert into argon_connection_row (supply_id, station_id, connected_millis, position)
                            values (:supply, :station, :at, :position)
                            """)
                    .param("supply", on.supply().value()).param("station", on.station().value())
                    .param("at", on.origin().at().elapsedMillis()).param("position", entry.position()).update();
            case ArgonEvent.Disconnected off -> jdbc.sql("""
                            update argon_connection_row set disconnected_millis = :at
                            where supply_id = :supply and disconnected_millis is null
                            """)
                    .param("supply", off.supply().value())
                    .param("at", off.origin().at().elapsedMillis()).update();
            case ArgonEvent other -> { }
        }
    }

    /** Which sources fed {@code station} between two moments, clipped to them, in the order of connection. */
    List<Span> spans(StationId station, long fromMillis, long toMillis) {
        return jdbc.sql("""
                        select supply_id, connected_millis, disconnected_millis
                        from argon_connection_row
                        where station_id = :station and connected_millis < :to
                            and (disconnected_millis is null or disconnected_millis > :from)
                        order by connected_millis, position
                        """)
                .param("station", station.value()).param("from", fromMillis).param("to", toMillis)
                .query((row, number) -> {
                    long off = row.getLong("disconnected_millis");
                    long until = row.wasNull() ? toMillis : Math.min(toMillis, off);
                    return new Span(new SupplyId(row.getString("supply_id")),
                            Math.max(fromMillis, row.getLong("connected_millis")), until);
                }).list();
    }

    /** Every source, those that are gone too, sorted by label. */
    List<SupplyId> sources() {
        return jdbc.sql("select supply_id from argon_row order by supply_id").query(String.class).list().stream()
                .map(SupplyId::new).toList();
    }

    /** The last {@code limit} readings of a source, latest first; without those that were corrected. */
    List<ArgonReading> readings(SupplyId supply, int limit) {
        return jdbc.sql("""
                        select read_at, elapsed_millis, pressure, temperature, level_percent, meter
                        from argon_reading_row
                        where supply_id = :supply
                        order by position desc
                        fetch first :limit rows only
                        """)
                .param("supply", supply.value()).param("limit", limit)
                .query((row, number) -> reading(row)).list();
    }

    private void insert(SupplyId supply, ArgonReading reading, boolean corrects, long position) {
        if (corrects) {
            jdbc.sql("""
                            delete from argon_reading_row
                            where supply_id = :supply and position =
                                (select max(position) from argon_reading_row where supply_id = :supply)
                            """)
                    .param("supply", supply.value()).update();
        }
        jdbc.sql("""
                        insert into argon_reading_row (supply_id, read_at, elapsed_millis, pressure, temperature,
                            level_percent, meter, position)
                        values (:supply, :at, :elapsed, :pressure, :temperature, :level, :meter, :position)
                        """)
                .param("supply", supply.value())
                .param("at", reading.at().wall().toString())
                .param("elapsed", reading.at().elapsedMillis())
                .param("pressure", reading.pressureBarGauge().map(BigDecimal::toPlainString).orElse(null))
                .param("temperature", reading.temperatureCelsius().map(BigDecimal::toPlainString).orElse(null))
                .param("level", reading.levelPercent().map(BigDecimal::toPlainString).orElse(null))
                .param("meter", reading.meter().map(SupplyId::value).orElse(null))
                .param("position", position)
                .update();
    }

    private static ArgonReading reading(ResultSet row) throws SQLException {
        return new ArgonReading(new Moment(Instant.parse(row.getString("read_at")), row.getLong("elapsed_millis")),
                decimal(row, "pressure"), decimal(row, "temperature"), decimal(row, "level_percent"),
                Optional.ofNullable(row.getString("meter")).map(SupplyId::new));
    }

    private static Optional<BigDecimal> decimal(ResultSet row, String column) throws SQLException {
        return Optional.ofNullable(row.getString(column)).map(BigDecimal::new);
    }
}

package brightseam.chamber.shell;

import brightseam.chamber.ArgonEvent;
import brightseam.chamber.ArgonReading;
import brightseam.kernel.Moment;
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

/** Which sources of argon there are, and what was read off them: {@code argon_row}, {@code argon_reading_row}. */
final class ArgonRows implements Projection {

    private final JdbcClient jdbc;

    ArgonRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public List<String> tables() {
        return List.of("argon_row", "argon_reading_row");
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
            case ArgonEvent other -> { }
        }
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

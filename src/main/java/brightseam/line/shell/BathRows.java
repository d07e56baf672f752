package brightseam.line.shell;

import brightseam.kernel.StationId;
import brightseam.ledger.Entry;
import brightseam.ledger.shell.Projection;
import brightseam.line.BathEvent;
import brightseam.line.BathQuantity;
import brightseam.line.SampleLine;
import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Which tanks have baths, and their analyses: {@code bath_row}, {@code bath_analysis_row}, {@code bath_value_row}. */
final class BathRows implements Projection {

    private final JdbcClient jdbc;

    BathRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public List<String> tables() {
        return List.of("bath_row", "bath_analysis_row", "bath_value_row");
    }

    @Override
    public void apply(Entry entry) {
        if (!BathStreams.isMine(entry)) {
            return;
        }
        switch (BathStreams.KIND.codec().read(entry)) {
            case BathEvent.Registered first -> jdbc.sql("""
                            insert into bath_row (station_id, liquid, fill_number) values (:station, :liquid, 1)
                            """)
                    .param("station", first.station().value()).param("liquid", first.liquid().name()).update();
            case BathEvent.MadeUp made -> jdbc.sql("""
                            update bath_row set fill_number = :fill where station_id = :station
                            """)
                    .param("station", made.station().value()).param("fill", made.fill()).update();
            case BathEvent.Analysed analysed -> insert(analysed, entry.position());
            case BathEvent other -> { }
        }
    }

    /** The tanks that have baths, sorted by label. */
    List<StationId> stations() {
        return jdbc.sql("select station_id from bath_row order by station_id").query(String.class).list().stream()
                .map(StationId::new).toList();
    }

    /** The last {@code limit} analyses, latest first. */
    List<SampleLine> samples(StationId station, int limit) {
        return jdbc.sql("""
                        select sample_number, fill_number, taken_at, entered_at, method, workings, signed_by
                        from bath_analysis_row
                        where station_id = :station
                        order by position desc
                        fetch first :limit rows only
                        """)
                .param("station", station.value()).param("limit", limit)
                .query((row, number) -> sample(station, row)).list();
    }

    private SampleLine sample(StationId station, ResultSet row) throws SQLException {
        SortedMap<BathQuantity, BigDecimal> values = new TreeMap<>();
        List<BathQuantity> outside = new ArrayList<>();
        jdbc.sql("""
                        select quantity, measured, in_limits from bath_value_row
                        where station_id = :station and sample_number = :sample
                        """)
                .param("station", station.value()).param("sample", row.getString("sample_number"))
                .query(value -> {
                    BathQuantity quantity = BathQuantity.valueOf(value.getString("quantity"));
                    values.put(quantity, new BigDecimal(value.getString("measured")));
                    if (!value.getBoolean("in_limits")) {
                        outside.add(quantity);
                    }
                });
        return line(row, values, outside.stream().sorted().toList());
    }

    private void insert(BathEvent.Analysed event, long position) {
        jdbc.sql("""
                        insert into bath_analysis_row (station_id, sample_number, fill_number, taken_at, entered_at,
                            method, workings, signed_by, position)
                        values (:station, :sample, :fill, :taken, :entered, :method, :workings, :by, :position)
                        """)
                .param("station", event.station().value())
                .param("sample", event.sample())
                .param("fill", event.fill())
                .param("taken", event.takenAt().wall().toString())
                .param("entered", event.origin().at().wall().toString())
                .param("method", event.method())
                .param("workings", String.join("\n", event.workings()))
                .param("by", event.signer().name())
                .param("position", position)
                .update();
        event.values().forEach((quantity, value) -> jdbc.sql("""
                        insert into bath_value_row (station_id, sample_number, quantity, measured, in_limits)
                        values (:station, :sample, :quantity, :measured, :good)
                        """)
                .param("station", event.station().value())
                .param("sample", event.sample())
                .param("quantity", quantity.name())
                .param("measured", value.toPlainString())
                .param("good", !event.outOfLimits().contains(quantity))
                .update());
    }

    private static SampleLine line(ResultSet row, SortedMap<BathQuantity, BigDecimal> values,
            List<BathQuantity> outOfLimits) throws SQLException {
        return new SampleLine(
                row.getString("sample_number"),
                row.getInt("fill_number"),
                Instant.parse(row.getString("taken_at")),
                Instant.parse(row.getString("entered_at")),
                row.getString("method"),
                values,
                outOfLimits,
                lines(row.getString("workings")),
                row.getString("signed_by"));
    }

    static List<String> lines(String text) {
        return text.isEmpty() ? List.of() : new ArrayList<>(List.of(text.split("\n")));
    }
}

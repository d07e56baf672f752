package brightseam.device.shell;

import brightseam.device.MeterEvent;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.ledger.Entry;
import brightseam.ledger.shell.Projection;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Which meters there are and where: the table {@code meter_row}. The rest of each is in its stream. */
final class MeterRows implements Projection {

    private final JdbcClient jdbc;

    MeterRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public List<String> tables() {
        return List.of("meter_row");
    }

    @Override
    public void apply(Entry entry) {
        if (!isMine(entry)) {
            return;
        }
        switch (MeterStreams.KIND.codec().read(entry)) {
            case MeterEvent.Registered e -> jdbc.sql("""
                            insert into meter_row (meter_id, station_id) values (:meter, :station)
                            """)
                    .param("meter", e.meter().value()).param("station", e.terms().station().value()).update();
            case MeterEvent.TermsChanged e -> jdbc.sql("""
                            update meter_row set station_id = :station where meter_id = :meter
                            """)
                    .param("meter", e.meter().value()).param("station", e.terms().station().value()).update();
            case MeterEvent other -> { }
        }
    }

    /** Whether {@code entry} is of a meter. */
    static boolean isMine(Entry entry) {
        return entry.stream().family().equals(MeterStreams.KIND.family())
                && MeterStreams.KIND.codec().knows(entry.type());
    }

    /** Every meter, sorted by label. */
    List<SupplyId> all() {
        return jdbc.sql("select meter_id from meter_row order by meter_id").query(String.class).list().stream()
                .map(SupplyId::new).toList();
    }

    /** The meters of {@code station}, sorted by label. */
    List<SupplyId> at(StationId station) {
        return jdbc.sql("select meter_id from meter_row where station_id = :station order by meter_id")
                .param("station", station.value()).query(String.class).list().stream().map(SupplyId::new).toList();
    }
}

package brightseam.trace.shell;

import brightseam.kernel.TravellerId;
import brightseam.trace.Beside;
import brightseam.trace.Touch;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;

/** From pieces to what touched them, and to what it touched beside them. */
final class PieceRows {

    private static final String BESIDE = """
            select c.from_millis, c.until_millis,
            """ + WhereaboutsRows.COLUMNS + """
            from trace_contact c
            join trace_traveller t on t.traveller_id = c.traveller_id
            where c.kind = ? and c.label = ? and c.lot = ? and c.from_millis <= ?
                and (c.until_millis is null or c.until_millis >= ?) and c.traveller_id <> ?
            """;

    private final JdbcClient jdbc;

    PieceRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<Touch> touches(TravellerId traveller) {
        return jdbc.sql("select " + ContactRows.COLUMNS + """
                from trace_contact where traveller_id = ? order by from_millis, position, number
                """).param(traveller.value()).query(ContactRows::touch).list();
    }

    List<Beside> beside(TravellerId traveller) {
        List<Beside> beside = new ArrayList<>();
        for (Touch own : touches(traveller)) {
            if (own.thing().kind().carries()) {
                beside.addAll(beside(own));
            }
        }
        beside.sort(Comparator.comparing((Beside one) -> one.own().from()).reversed()
                .thenComparing(one -> one.now().traveller()));
        return List.copyOf(beside);
    }

    private List<Beside> beside(Touch own) {
        return jdbc.sql(BESIDE)
                .params(own.thing().kind().name(), own.thing().label(), own.thing().lot(),
                        own.until().map(Instant::toEpochMilli).orElse(Long.MAX_VALUE), own.from().toEpochMilli(),
                        own.traveller().value())
                .query((row, number) -> new Beside(own, WhereaboutsRows.whereabouts(row, number),
                        Instant.ofEpochMilli(row.getLong("from_millis")), ContactRows.until(row)))
                .list();
    }
}

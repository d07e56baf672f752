package brightseam.device.shell;

import brightseam.device.Reading;
import brightseam.device.Series;
import brightseam.device.SeriesBlock;
import brightseam.device.SeriesBuilder;
import brightseam.kernel.SupplyId;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.GeneratedKeyHolder;
import org.springframework.jdbc.support.KeyHolder;

/** The table {@code series_post}: what other nodes hand to the one that keeps the readings. */
final class SeriesPost {

    private static final int LETTERS_AT_ONCE = 500;

    private final JdbcClient jdbc;

    SeriesPost(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * One row.
     *
     * @param readings to be taken; empty where the meter is to be settled up to {@code untilMillis}
     */
    record Letter(long number, SupplyId meter, long untilMillis, Optional<Series> readings) {}

    /** Hands {@code readings} over; they are in the database when this returns. */
    void send(SupplyId meter, List<Reading> readings) {
        SeriesBuilder series = new SeriesBuilder(readings.size());
        readings.forEach(series::add);
        jdbc.sql("insert into series_post (meter_id, until_millis, bytes) values (?, 0, ?)")
                .params(meter.value(), SeriesBlock.pack(series.build())).update();
    }

    /** Asks for {@code meter} to be settled; answers the number of the row, which is removed when that is done. */
    long askToSettle(SupplyId meter, long untilMillis) {
        KeyHolder number = new GeneratedKeyHolder();
        jdbc.sql("insert into series_post (meter_id, until_millis) values (?, ?)")
                .params(meter.value(), untilMillis).update(number, "number");
        return number.getKeyAs(Long.class);
    }

    boolean isOpen(long number) {
        return jdbc.sql("select count(*) from series_post where number = ?").param(number)
                .query(Long.class).single() > 0;
    }

    /** What waits, in the order in which it was sent. */
    List<Letter> waiting() {
        return jdbc.sql("""
                        select number, meter_id, until_millis, bytes from series_post
                        order by number fetch first ? rows only
                        """)
                .param(LETTERS_AT_ONCE)
                .query((row, index) -> new Letter(row.getLong("number"), new SupplyId(row.getString("meter_id")),
                        row.getLong("until_millis"),
                        Optional.ofNullable(row.getBytes("bytes")).map(SeriesBlock::unpack)))
                .list();
    }

    void done(Letter letter) {
        jdbc.sql("delete from series_post where number = ?").param(letter.number()).update();
    }
}

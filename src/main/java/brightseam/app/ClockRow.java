package brightseam.app;

import java.time.Instant;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The one row of {@code shop_clock}. */
final class ClockRow {

    private final JdbcClient jdbc;

    ClockRow(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Optional<TimeLine.Anchor> read() {
        return jdbc.sql("""
                        select elapsed_millis, shop_wall_millis, machine_wall_millis, boot_id, uptime_millis
                        from shop_clock where id = 1
                        """)
                .query((row, number) -> new TimeLine.Anchor(
                        row.getLong("elapsed_millis"), Instant.ofEpochMilli(row.getLong("shop_wall_millis")),
                        Instant.ofEpochMilli(row.getLong("machine_wall_millis")), row.getString("boot_id"),
                        row.getLong("uptime_millis")))
                .optional();
    }

    void write(TimeLine.Anchor anchor) {
        Object[] values = {
            anchor.elapsedMillis(), anchor.shopWall().toEpochMilli(), anchor.machineWall().toEpochMilli(),
            anchor.bootId(), anchor.uptimeMillis()
        };
        int changed = jdbc.sql("""
                        update shop_clock set elapsed_millis = ?, shop_wall_millis = ?, machine_wall_millis = ?,
                            boot_id = ?, uptime_millis = ? where id = 1
                        """)
                .params(values)
                .update();
        if (changed == 0) {
            jdbc.sql("""
                            insert into shop_clock (elapsed_millis, shop_wall_millis, machine_wall_millis, boot_id,
                                uptime_millis, id) values (?, ?, ?, ?, ?, 1)
                            """)
                    .params(values)
                    .update();
        }
    }
}

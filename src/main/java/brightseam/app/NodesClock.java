package brightseam.app;

import brightseam.ledger.shell.Lead;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * The one clock of several nodes. The lead notes down where it stands, beside the database's own time; the others go by
 * the row and by how long ago, on the database's clock, it was noted. That age is believed for some seconds alone, so
 * a stepped clock of the database moves nobody: meanwhile each node goes on by its own steady counter. A demo clock
 * that was hurried on any node is noted by that node, and the lead goes on from there.
 */
final class NodesClock implements Consumer<TimeLine.Anchor> {

    /** The lead notes every two seconds; an age beyond this tells of a lead that is gone, or of a stepped clock. */
    private static final long AGE_MILLIS_MAX = 10_000;
    /** Real time by which two nodes never differ; what is further ahead was skipped here. */
    private static final long SKIPPED_MILLIS_MIN = 500;

    private final JdbcClient jdbc;
    private final Lead lead;
    private final String node = UUID.randomUUID().toString();
    private RunningClock clock;

    NodesClock(JdbcClient jdbc, Lead lead) {
        this.jdbc = jdbc;
        this.lead = lead;
    }

    /**
     * What is noted down.
     *
     * @param anchor its machine time is the database's
     * @param databaseNow the database's time when the row was read
     */
    record Noted(TimeLine.Anchor anchor, double speed, String by, Instant databaseNow) {

        long ageMillis() {
            return Duration.between(anchor.machineWall(), databaseNow).toMillis();
        }

        boolean isFresh() {
            return ageMillis() >= 0 && ageMillis() <= AGE_MILLIS_MAX;
        }

        double elapsedMillis() {
            return anchor.elapsedMillis() + ageMillis() * speed;
        }

        Instant wall() {
            return anchor.shopWall().plusMillis(Math.round(ageMillis() * speed));
        }
    }

    /** Keeps {@code clock} with the others from now on. */
    <C extends RunningClock> C keeping(C running) {
        clock = running;
        return running;
    }

    /** Brings this node's clock to the others', or notes down for them where it stands. */
    @Override
    public void accept(TimeLine.Anchor now) {
        Optional<Noted> noted = read();
        if (noted.isEmpty()) {
            first(now);
            return;
        }
        Noted row = noted.get();
        boolean others = !row.by().equals(node);
        boolean leads = lead.isLead();
        if (leads || isChangedHere(row, now)) {
            if (leads && others && row.isFresh()) {
                clock.follow((line, sample) -> forward(line.to(sample), row, sample));
            }
            write(row, clock.anchor());
        } else if (others && row.isFresh()) {
            clock.follow((line, sample) ->
                    line.standingAt(row.elapsedMillis(), row.wall(), row.speed(), sample));
        }
    }

    /** What is noted down; empty in a shop that starts for the first time. */
    Optional<Noted> read() {
        return jdbc.sql("""
                        select elapsed_millis, shop_wall_millis, machine_wall_millis, boot_id, uptime_millis, speed,
                            noted_by, cast(extract(epoch from clock_timestamp()) * 1000 as bigint) as now_millis
                        from shop_clock where id = 1
                        """)
                .query((row, number) -> new Noted(
                        new TimeLine.Anchor(row.getLong("elapsed_millis"),
                                Instant.ofEpochMilli(row.getLong("shop_wall_millis")),
                                Instant.ofEpochMilli(row.getLong("machine_wall_millis")), row.getString("boot_id"),
                                row.getLong("uptime_millis")),
                        row.getDouble("speed"), row.getString("noted_by"),
                        Instant.ofEpochMilli(row.getLong("now_millis"))))
                .optional();
    }

    private static TimeLine forward(TimeLine line, Noted row, TimeLine.Sample sample) {
        boolean ahead = row.elapsedMillis() > line.elapsedMillis();
        return line.standingAt(ahead ? row.elapsedMillis() : line.elapsedMillis(), ahead ? row.wall() : line.demoWall(),
                row.speed(), sample);
    }

    private boolean isChangedHere(Noted row, TimeLine.Anchor now) {
        double ahead = now.elapsedMillis() - row.elapsedMillis();
        return row.isFresh() && (clock.speed() != row.speed() || ahead > SKIPPED_MILLIS_MIN * clock.speed());
    }

    private void first(TimeLine.Anchor now) {
        if (lead.isLead()) {
            jdbc.sql("""
                            insert into shop_clock (id, elapsed_millis, shop_wall_millis, machine_wall_millis, boot_id,
                                uptime_millis, speed, noted_by)
                            values (1, ?, ?, cast(extract(epoch from clock_timestamp()) * 1000 as bigint), ?, ?, ?, ?)
                            """)
                    .params(now.elapsedMillis(), now.shopWall().toEpochMilli(), now.bootId(), now.uptimeMillis(),
                            clock.speed(), node)
                    .update();
        }
    }

    /** Writes only over what was read: whoever was faster is looked at the next time. */
    private void write(Noted read, TimeLine.Anchor now) {
        jdbc.sql("""
                        update shop_clock set elapsed_millis = ?, shop_wall_millis = ?,
                            machine_wall_millis = cast(extract(epoch from clock_timestamp()) * 1000 as bigint),
                            boot_id = ?, uptime_millis = ?, speed = ?, noted_by = ?
                        where id = 1 and noted_by = ? and elapsed_millis = ?
                        """)
                .params(now.elapsedMillis(), now.shopWall().toEpochMilli(), now.bootId(), now.uptimeMillis(),
                        clock.speed(), node, read.by(), read.anchor().elapsedMillis())
                .update();
    }
}

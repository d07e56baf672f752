package brightseam.people.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Syntax;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** Which tablets there are, who is signed in on them, and which card is open on each. */
@Service
public class Tablets {

    private static final String COLUMNS =
            "select label, badge, signed_in_millis, active_millis, open_card from tablet ";
    /** Activity is written down no more often than this, to spare the disk. */
    private static final long TOUCH_MILLIS = 10_000;

    private final JdbcClient jdbc;
    private final RealTime time;
    private final Duration idle;

    Tablets(JdbcClient jdbc, RealTime time, @Value("${brightseam.idle-minutes:15}") long idleMinutes) {
        if (idleMinutes < 1) {
            throw new IllegalArgumentException("brightseam.idle-minutes: at least 1");
        }
        this.jdbc = jdbc;
        this.time = time;
        this.idle = Duration.ofMinutes(idleMinutes);
    }

    /** The tablet of this label. */
    public Optional<Tablet> find(String label) {
        return jdbc.sql(COLUMNS + "where label = ?").params(label).query((row, number) -> tablet(row)).optional();
    }

    /** Every tablet, by label. */
    public List<Tablet> all() {
        return jdbc.sql(COLUMNS + "order by label").query((row, number) -> tablet(row)).list();
    }

    /** Who is signed in on {@code tablet} and has not been idle too long. */
    public Optional<BadgeId> present(Tablet tablet) {
        return idleAt(tablet).filter(end -> time.now().isBefore(end)).flatMap(end -> tablet.badge());
    }

    /** When the person on {@code tablet} will be signed out unless they touch it; in real time. */
    public Optional<Instant> idleAt(Tablet tablet) {
        return tablet.badge().isPresent() ? tablet.activeAt().map(active -> active.plus(idle)) : Optional.empty();
    }

    /** Remembers that {@code card}, the label of a traveller or bin, is open on the tablet. */
    public void openCard(String label, String card) {
        jdbc.sql("update tablet set open_card = ? where label = ?")
                .params(Syntax.identity("card", card), label)
                .update();
    }

    /** Nothing is open on the tablet any more. */
    public void closeCard(String label) {
        jdbc.sql("update tablet set open_card = null where label = ?").params(label).update();
    }

    /** Signs whoever is on the tablet out; the open card stays for the next person. */
    public void signOut(String label) {
        jdbc.sql("update tablet set badge = null, signed_in_millis = null where label = ?").params(label).update();
    }

    /** Signs a person out of every tablet. */
    public void signOutEverywhere(BadgeId badge) {
        jdbc.sql("update tablet set badge = null, signed_in_millis = null where badge = ?")
                .params(badge.value())
                .update();
    }

    Optional<Tablet> byToken(String token) {
        return jdbc.sql(COLUMNS + "where token_hash = ?")
                .params(TabletToken.hash(token))
                .query((row, number) -> tablet(row))
                .optional();
    }

    /** Makes a new tablet known under {@code token} and answers its label. */
    String enrol(String token) {
        while (true) {
            String label = TabletToken.label();
            try {
                jdbc.sql("insert into tablet (label, token_hash) values (?, ?)")
                        .params(label, TabletToken.hash(token))
                        .update();
                return label;
            } catch (DuplicateKeyException taken) {
                if (find(label).isEmpty()) {
                    throw taken;
                }
            }
        }
    }

    /** From now on the tablet is known by {@code token} alone. */
    void changeToken(String label, String token) {
        jdbc.sql("update tablet set token_hash = ? where label = ?").params(TabletToken.hash(token), label).update();
    }

    void signIn(String label, BadgeId badge) {
        long now = time.millis();
        jdbc.sql("update tablet set badge = ?, signed_in_millis = ?, active_millis = ? where label = ?")
                .params(badge.value(), now, now, label)
                .update();
    }

    void touch(Tablet tablet) {
        long now = time.millis();
        if (tablet.activeAt().map(active -> now - active.toEpochMilli() >= TOUCH_MILLIS).orElse(true)) {
            jdbc.sql("update tablet set active_millis = ? where label = ?").params(now, tablet.label()).update();
        }
    }

    private static Tablet tablet(ResultSet row) throws SQLException {
        return new Tablet(
                row.getString("label"),
                Optional.ofNullable(row.getString("badge")).map(BadgeId::new),
                instant(row, "signed_in_millis"),
                instant(row, "active_millis"),
                Optional.ofNullable(row.getString("open_card")));
    }

    private static Optional<Instant> instant(ResultSet row, String column) throws SQLException {
        long millis = row.getLong(column);
        return row.wasNull() ? Optional.empty() : Optional.of(Instant.ofEpochMilli(millis));
    }
}

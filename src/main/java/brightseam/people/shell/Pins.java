package brightseam.people.shell;

import brightseam.kernel.BadgeId;
import brightseam.people.PinLife;
import brightseam.people.PinRules;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;

/** PIN hashes, how old they are, and the count of wrong PINs in a row. Made by {@link PeopleWiring}. */
class Pins {

    private static final String COLUMNS =
            "select pin_hash, failures, next_try_millis, set_millis, first_pin from person_pin where badge = ?";

    private final JdbcClient jdbc;
    private final RealTime time;
    private final PinHashes hashes;
    private final PinLife life;
    private final String nobodysHash;

    Pins(JdbcClient jdbc, RealTime time, PinHashes hashes, PinLife life) {
        this.jdbc = jdbc;
        this.time = time;
        this.hashes = hashes;
        this.life = life;
        this.nobodysHash = hashes.hash("nobody");
    }

    /**
     * What is kept of a badge's PIN.
     *
     * @param setMillis when it was set, on the shop's wall clock; 0 where that was not written down in its day
     * @param first whether somebody else chose it
     */
    record Kept(String hash, int failures, long nextTryMillis, long setMillis, boolean first) {

        boolean isClosed() {
            return failures >= PinRules.FAILURES_MAX;
        }

        Kept until(long tryMillis) {
            return new Kept(hash, failures, tryMillis, setMillis, first);
        }
    }

    Optional<Kept> find(BadgeId badge) {
        return jdbc.sql(COLUMNS).params(badge.value()).query((row, number) -> kept(row)).optional();
    }

    String hash(String pin) {
        return hashes.hash(pin);
    }

    /** Compares, and takes as long where there is nothing to compare with. */
    boolean matches(Optional<Kept> kept, String pin) {
        String candidate = PinRules.hasForm(pin) ? pin : "";
        boolean same = hashes.matches(candidate, kept.map(Kept::hash).orElse(nobodysHash));
        return same && kept.isPresent();
    }

    /** What a PIN is good for at {@code now}; one whose age is not known begins to live when it is used next. */
    PinLife.Standing standing(Kept kept, Instant now) {
        return life.standing(kept.setMillis() == 0 ? now : Instant.ofEpochMilli(kept.setMillis()), kept.first(), now);
    }

    /** When it ends; empty where it does not, or where its age is not known yet. */
    Optional<Instant> endOf(Kept kept) {
        return kept.setMillis() == 0 ? Optional.empty() : life.endOf(Instant.ofEpochMilli(kept.setMillis()));
    }

    /** Whether {@code pin} is the one in use or one of the last before it. */
    boolean wasUsed(BadgeId badge, String pin) {
        return jdbc.sql("select pin_hash from person_pin_before where badge = ?")
                .params(badge.value())
                .query(String.class).list().stream()
                .anyMatch(hash -> hashes.matches(pin, hash))
                || find(badge).filter(kept -> hashes.matches(pin, kept.hash())).isPresent();
    }

    /** Puts a new PIN in the place of the one in use, which is remembered; the count of wrong ones stays. */
    void replace(BadgeId badge, String hash, Instant setAt, boolean first) {
        remember(badge);
        int changed = jdbc.sql("""
                update person_pin set pin_hash = ?, next_try_millis = 0, set_millis = ?, first_pin = ?
                where badge = ?""")
                .params(hash, setAt.toEpochMilli(), first, badge.value())
                .update();
        if (changed == 0) {
            jdbc.sql("""
                    insert into person_pin (badge, pin_hash, failures, next_try_millis, set_millis, first_pin)
                    values (?, ?, 0, 0, ?, ?)""")
                    .params(badge.value(), hash, setAt.toEpochMilli(), first)
                    .update();
        }
    }

    /** After {@code pin} was right: no wrong ones in a row; hashed as new ones are; its age is known from now on. */
    void right(BadgeId badge, Kept kept, String pin, Instant now) {
        jdbc.sql("update person_pin set failures = 0, next_try_millis = 0 where badge = ?")
                .params(badge.value())
                .update();
        if (hashes.isOld(kept.hash())) {
            jdbc.sql("update person_pin set pin_hash = ? where badge = ? and pin_hash = ?")
                    .params(hashes.hash(pin), badge.value(), kept.hash())
                    .update();
        }
        if (kept.setMillis() == 0) {
            jdbc.sql("update person_pin set set_millis = ? where badge = ? and set_millis = 0")
                    .params(now.toEpochMilli(), badge.value())
                    .update();
        }
    }

    void remove(BadgeId badge) {
        jdbc.sql("delete from person_pin where badge = ?").params(badge.value()).update();
        jdbc.sql("delete from person_pin_before where badge = ?").params(badge.value()).update();
    }

    /**
     * Counts a try as wrong before it is checked, so that many tries at once are not many free tries. False where
     * another try got in between or the badge is closed.
     */
    boolean claimTry(BadgeId badge, Kept kept) {
        int failures = kept.failures() + 1;
        return jdbc.sql("""
                update person_pin set failures = ?, next_try_millis = ?
                where badge = ? and failures = ? and pin_hash = ?""")
                .params(failures, time.millis() + PinRules.pauseSeconds(failures) * 1000L,
                        badge.value(), kept.failures(), kept.hash())
                .update() == 1;
    }

    void forgive(BadgeId badge) {
        jdbc.sql("update person_pin set failures = 0, next_try_millis = 0 where badge = ?")
                .params(badge.value())
                .update();
    }

    /** How many PINs were hashed with a pepper that is not there any more: nobody can sign in with one of them. */
    long withAnotherPepper() {
        return jdbc.sql("select pin_hash from person_pin").query(String.class).list().stream()
                .filter(hashes::needsAnotherPepper).count();
    }

    private void remember(BadgeId badge) {
        jdbc.sql("""
                insert into person_pin_before (badge, set_millis, pin_hash)
                select badge, set_millis, pin_hash from person_pin where badge = ?""")
                .params(badge.value())
                .update();
        List<Long> times = jdbc.sql("select set_millis from person_pin_before where badge = ? order by set_millis desc")
                .params(badge.value())
                .query(Long.class).list();
        if (times.size() >= PinLife.LAST_ONES) {
            jdbc.sql("delete from person_pin_before where badge = ? and set_millis < ?")
                    .params(badge.value(), times.get(PinLife.LAST_ONES - 2))
                    .update();
        }
    }

    private static Kept kept(ResultSet row) throws SQLException {
        return new Kept(row.getString("pin_hash"), row.getInt("failures"), row.getLong("next_try_millis"),
                row.getLong("set_millis"), row.getBoolean("first_pin"));
    }
}

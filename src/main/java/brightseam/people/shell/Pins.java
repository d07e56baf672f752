package brightseam.people.shell;

import brightseam.kernel.BadgeId;
import brightseam.people.PinRules;
import java.util.Optional;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;

/** PIN hashes and the count of wrong PINs in a row. */
@Component
class Pins {

    private final JdbcClient jdbc;
    private final RealTime time;
    private final PasswordEncoder encoder;
    private final String nobodysHash;

    /**
     * Strength 10 takes 65 ms of processor time on the two-core machine it was tuned on. It slows guessing down; what
     * stops guessing is the count, since somebody who holds the database tries all short PINs in minutes anyway.
     */
    Pins(JdbcClient jdbc, RealTime time, @Value("${brightseam.pin-strength:10}") int strength) {
        this.jdbc = jdbc;
        this.time = time;
        this.encoder = new BCryptPasswordEncoder(strength);
        this.nobodysHash = encoder.encode("nobody");
    }

    /** What is kept of a badge's PIN. */
    record Kept(String hash, int failures, long nextTryMillis) {
        boolean isClosed() {
            return failures >= PinRules.FAILURES_MAX;
        }
    }

    Optional<Kept> find(BadgeId badge) {
        return jdbc.sql("select pin_hash, failures, next_try_millis from person_pin where badge = ?")
                .params(badge.value())
                .query((row, number) -> new Kept(
                        row.getString("pin_hash"), row.getInt("failures"), row.getLong("next_try_millis")))
                .optional();
    }

    String hash(String pin) {
        return encoder.encode(pin);
    }

    /** Compares, and takes as long where there is nothing to compare with. */
    boolean matches(Optional<Kept> kept, String pin) {
        String candidate = PinRules.hasForm(pin) ? pin : "";
        boolean same = encoder.matches(candidate, kept.map(Kept::hash).orElse(nobodysHash));
        return same && kept.isPresent();
    }

    void put(BadgeId badge, Kept kept) {
        int changed = jdbc.sql("""
                update person_pin set pin_hash = ?, failures = ?, next_try_millis = ? where badge = ?""")
                .params(kept.hash(), kept.failures(), kept.nextTryMillis(), badge.value())
                .update();
        if (changed == 0) {
            jdbc.sql("insert into person_pin (badge, pin_hash, failures, next_try_millis) values (?, ?, ?, ?)")
                    .params(badge.value(), kept.hash(), kept.failures(), kept.nextTryMillis())
                    .update();
        }
    }

    void remove(BadgeId badge) {
        jdbc.sql("delete from person_pin where badge = ?").params(badge.value()).update();
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
}

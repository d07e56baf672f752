package brightseam.people.shell;

import java.util.Map;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;
import org.springframework.security.crypto.password.DelegatingPasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;

/**
 * Hashes PINs with pepper and bcrypt. Each hash says how it was made; what was made in an older way, without pepper or
 * at another strength, still matches and is to be made anew then.
 */
final class PinHashes {

    private static final String BARE = "bcrypt";
    private static final String PEPPERED = "bcrypt+";

    private final String id;
    private final DelegatingPasswordEncoder encoder;

    /**
     * Strength 10 takes 65 ms of processor time on the two-core machine it was tuned on. It slows guessing down; what
     * stops guessing is the count of wrong PINs, and without the pepper the hashes alone are of no use.
     */
    PinHashes(Pepper pepper, int strength) {
        PasswordEncoder bcrypt = new BCryptPasswordEncoder(strength);
        this.id = PEPPERED + pepper.mark();
        this.encoder = new DelegatingPasswordEncoder(id, Map.of(id, new Peppered(pepper, bcrypt), BARE, bcrypt));
        encoder.setDefaultPasswordEncoderForMatches(new FirstForm(bcrypt, id));
    }

    String hash(String pin) {
        return encoder.encode(pin);
    }

    boolean matches(String pin, String hash) {
        return encoder.matches(pin, hash);
    }

    /** Whether {@code hash}, which matched, is to be replaced by one that is made as new ones are. */
    boolean isOld(String hash) {
        return encoder.upgradeEncoding(hash);
    }

    /** Whether {@code hash} was made with a pepper that is not this one, so that no PIN matches it. */
    boolean needsAnotherPepper(String hash) {
        return hash.startsWith("{" + PEPPERED) && !hash.startsWith("{" + id + "}");
    }

    private record Peppered(Pepper pepper, PasswordEncoder bcrypt) implements PasswordEncoder {

        @Override
        public String encode(CharSequence pin) {
            return bcrypt.encode(pepper.with(pin));
        }

        @Override
        public boolean matches(CharSequence pin, String hash) {
            return bcrypt.matches(pepper.with(pin), hash);
        }

        @Override
        public boolean upgradeEncoding(String hash) {
            return bcrypt.upgradeEncoding(hash);
        }
    }

    /** The first hashes were bare bcrypt and did not say so; one of another pepper matches nothing. */
    private record FirstForm(PasswordEncoder bcrypt, String id) implements PasswordEncoder {

        @Override
        public String encode(CharSequence pin) {
            throw new UnsupportedOperationException("nothing is hashed in the first form any more");
        }

        @Override
        public boolean matches(CharSequence pin, String hash) {
            return !hash.startsWith("{") && bcrypt.matches(pin, hash);
        }
    }
}

package brightseam.people.shell;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Locale;
import org.springframework.stereotype.Component;

/**
 * The code that opens an empty shop: told on the server's console, so that whoever opens it can read the machine and
 * does not merely share its network. New at each start and kept nowhere.
 */
@Component
class OpeningCode {

    /** Without letters and digits that look alike; eight of them make 39 bits. */
    private static final String CHARACTERS = "ABCDEFGHJKMNPQRSTVWXYZ23456789";
    private static final int LENGTH = 8;

    private final String code;

    OpeningCode() {
        SecureRandom random = new SecureRandom();
        StringBuilder made = new StringBuilder();
        for (int i = 0; i < LENGTH; i++) {
            made.append(CHARACTERS.charAt(random.nextInt(CHARACTERS.length())));
        }
        this.code = made.toString();
    }

    /** As people read it: two groups of four. */
    String readable() {
        return code.substring(0, LENGTH / 2) + "-" + code.substring(LENGTH / 2);
    }

    /** Whether {@code given} is the code, written in whatever case and with or without its hyphen. */
    boolean is(String given) {
        String plain = given.toUpperCase(Locale.ROOT).replaceAll("[\\s-]", "");
        return MessageDigest.isEqual(
                plain.getBytes(StandardCharsets.UTF_8), code.getBytes(StandardCharsets.UTF_8));
    }
}

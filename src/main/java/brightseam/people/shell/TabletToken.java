package brightseam.people.shell;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/** What a tablet's cookie holds: 256 random bits. The server keeps only their SHA-256, which needs no salt here. */
final class TabletToken {

    private static final int BYTES = 32;
    private static final String LABEL_CHARACTERS = "ABCDEFGHJKMNPQRSTVWXYZ23456789";
    private static final int LABEL_LENGTH = 4;
    private static final SecureRandom RANDOM = new SecureRandom();

    private TabletToken() {}

    static String random() {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    static String hash(String token) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }

    /** A label without letters and digits that look alike. */
    static String label() {
        StringBuilder label = new StringBuilder("TAB-");
        for (int i = 0; i < LABEL_LENGTH; i++) {
            label.append(LABEL_CHARACTERS.charAt(RANDOM.nextInt(LABEL_CHARACTERS.length())));
        }
        return label.toString();
    }
}

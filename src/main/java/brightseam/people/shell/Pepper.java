package brightseam.people.shell;

import brightseam.kernel.shell.OwnerAlone;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * A secret of the server that goes into every PIN before it is hashed, kept in a file outside of the database: all PINs
 * of a few digits are tried in minutes by whoever has their hashes, and in vain by whoever lacks this.
 */
final class Pepper {

    static final String FILE = "pepper";

    private static final int BYTES = 32;
    private static final String HMAC = "HmacSHA256";
    /** So much of its fingerprint stands in each hash: enough to see that the file is not the one that was used. */
    private static final int MARK_LENGTH = 8;

    private final byte[] secret;

    Pepper(byte[] secret) {
        if (secret.length < BYTES) {
            throw new IllegalArgumentException("a pepper of fewer than " + BYTES + " bytes");
        }
        this.secret = secret.clone();
    }

    /**
     * Reads the pepper from {@code folder}, which is made with it where there is none, both for this user alone.
     *
     * @throws UncheckedIOException where the folder cannot be read or written
     * @throws IllegalStateException where the file is no pepper
     */
    static Pepper in(Path folder) {
        Path file = folder.resolve(FILE);
        try {
            if (!Files.exists(file)) {
                make(folder, file);
            }
            return new Pepper(HexFormat.of().parseHex(Files.readString(file, StandardCharsets.US_ASCII).strip()));
        } catch (IOException failure) {
            throw new UncheckedIOException("the PINs' pepper cannot be read or made: " + file, failure);
        } catch (IllegalArgumentException malformed) {
            throw new IllegalStateException(file + " is no pepper: restore it from its copy", malformed);
        }
    }

    /** What is hashed in the place of {@code pin}: its HMAC-SHA256 (RFC 2104) in hexadecimal, 64 characters. */
    String with(CharSequence pin) {
        return HexFormat.of().formatHex(mac(pin.toString()));
    }

    /** Tells this pepper from another one and gives nothing of it away. */
    String mark() {
        return HexFormat.of().formatHex(mac("which pepper")).substring(0, MARK_LENGTH);
    }

    private byte[] mac(String text) {
        try {
            Mac mac = Mac.getInstance(HMAC);
            mac.init(new SecretKeySpec(secret, HMAC));
            return mac.doFinal(text.getBytes(StandardCharsets.UTF_8));
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException("every Java platform has HmacSHA256", impossible);
        }
    }

    /** Under a name of its own first, so that nobody ever reads half of it; of two servers one makes it. */
    private static void make(Path folder, Path file) throws IOException {
        Files.createDirectories(folder, OwnerAlone.folder(folder));
        byte[] fresh = new byte[BYTES];
        new SecureRandom().nextBytes(fresh);
        Path half = Files.createTempFile(folder, FILE, ".new", OwnerAlone.file(folder));
        try {
            Files.writeString(half, HexFormat.of().formatHex(fresh) + "\n", StandardCharsets.US_ASCII);
            Files.createLink(file, half);
        } catch (FileAlreadyExistsException somebodyElseWasFirst) {
            return;
        } finally {
            Files.delete(half);
        }
    }
}

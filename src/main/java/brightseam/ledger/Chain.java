package brightseam.ledger;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * How an entry is hashed: SHA-256 (FIPS 180-4) over the canonical JSON (RFC 8785) of its envelope
 * {@code {"content":…,"previous":…,"stream":…,"type":…,"version":…}}.
 *
 * <p>The content arrives in canonical form already, made outside of the core. The envelope's names are in RFC 8785
 * order (section 3.2.3) as written here, and the other values need no escapes: their forms exclude quotes. So plain
 * concatenation is the canonical form, and two different entries never share an envelope.
 */
public final class Chain {

    /** What the first entry of a stream names as its previous hash: 64 zeros. */
    public static final String GENESIS = "0".repeat(64);

    private Chain() {}

    /** The entry that follows {@code previous} at {@code version}; {@code event} holds canonical JSON. */
    public static Entry entry(long position, StreamName stream, long version, NewEvent event, String previous) {
        String hash = hash(stream, version, event.type(), event.json(), previous);
        return new Entry(position, stream, version, event.type(), event.json(), previous, hash);
    }

    /** The hash that {@code entry} must have, from its own fields; its stated hash is not looked at. */
    public static String hash(Entry entry) {
        return hash(entry.stream(), entry.version(), entry.type(), entry.json(), entry.previous());
    }

    /** The canonical envelope that is hashed. */
    public static String envelope(StreamName stream, long version, String type, String content, String previous) {
        return "{\"content\":" + content + ",\"previous\":\"" + previous + "\",\"stream\":\"" + stream.value()
                + "\",\"type\":\"" + type + "\",\"version\":" + version + "}";
    }

    private static String hash(StreamName stream, long version, String type, String content, String previous) {
        return sha256(envelope(stream, version, type, content, previous).getBytes(StandardCharsets.UTF_8));
    }

    /** SHA-256 of {@code bytes} as 64 lower-case hexadecimal digits. */
    public static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}

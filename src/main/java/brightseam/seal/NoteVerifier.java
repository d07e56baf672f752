package brightseam.seal;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.EdECPoint;
import java.security.spec.EdECPublicKeySpec;
import java.security.spec.NamedParameterSpec;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;

/**
 * The public half of a key that signs notes (C2SP signed-note, Ed25519 of RFC 8032).
 *
 * <p>Written {@code name+id+key}: the name, the first four bytes of SHA-256 over name, line feed, algorithm byte 1 and
 * public key, as eight hexadecimal digits, and base64 of the algorithm byte and the public key.
 */
public final class NoteVerifier {

    static final byte ED25519 = 1;
    static final int ID_LENGTH = 4;
    private static final int PARTS = 3;

    private final String name;
    private final byte[] point;
    private final byte[] id;

    /**
     * The verifier named {@code name} of the 32 bytes of a public key as RFC 8032, section 5.1.5 encodes it.
     *
     * @throws IllegalArgumentException for an empty name, one with white space or a plus, and another length
     */
    public NoteVerifier(String name, byte[] point) {
        if (!name.matches("[^\\s+\\p{Cntrl}]+") || point.length != Hash.LENGTH) {
            throw new IllegalArgumentException("a key has a name without blanks and plus, and 32 bytes");
        }
        this.name = name;
        this.point = point.clone();
        byte[] hashed = Hash.sha256(
                (name + "\n").getBytes(StandardCharsets.UTF_8), new byte[] {ED25519}, point).bytes();
        this.id = Arrays.copyOf(hashed, ID_LENGTH);
    }

    /** What {@code text} says in the form {@code name+id+key}; empty where it is no such key or the id does not fit. */
    public static Optional<NoteVerifier> parse(String text) {
        String[] parts = text.strip().split("\\+", PARTS);
        if (parts.length != PARTS) {
            return Optional.empty();
        }
        try {
            byte[] key = Base64.getDecoder().decode(parts[2]);
            if (key.length != Hash.LENGTH + 1 || key[0] != ED25519) {
                return Optional.empty();
            }
            return Optional.of(new NoteVerifier(parts[0], Arrays.copyOfRange(key, 1, key.length)))
                    .filter(read -> read.idHex().equals(parts[1]));
        } catch (IllegalArgumentException notOne) {
            return Optional.empty();
        }
    }

    /** The name that signature lines carry. */
    public String name() {
        return name;
    }

    /** The short id that signature lines carry, eight hexadecimal digits. */
    public String idHex() {
        return HexFormat.of().formatHex(id);
    }

    /** The whole key as text, {@code name+id+key}. */
    public String text() {
        byte[] key = new byte[point.length + 1];
        key[0] = ED25519;
        System.arraycopy(point, 0, key, 1, point.length);
        return name + "+" + idHex() + "+" + Base64.getEncoder().encodeToString(key);
    }

    /** Whether {@code signature} is this key's over {@code message}: RFC 8032, section 5.1.7. */
    public boolean verify(byte[] message, byte[] signature) {
        try {
            Signature check = Signature.getInstance("Ed25519");
            check.initVerify(key());
            check.update(message);
            return check.verify(signature);
        } catch (GeneralSecurityException notOne) {
            return false;
        }
    }

    byte[] id() {
        return id.clone();
    }

    private PublicKey key() throws GeneralSecurityException {
        byte[] bigEndian = new byte[point.length];
        for (int i = 0; i < point.length; i++) {
            bigEndian[i] = point[point.length - 1 - i];
        }
        boolean xOdd = (bigEndian[0] & 0x80) != 0;
        bigEndian[0] &= 0x7f;
        EdECPoint decoded = new EdECPoint(xOdd, new BigInteger(1, bigEndian));
        return KeyFactory.getInstance("Ed25519")
                .generatePublic(new EdECPublicKeySpec(NamedParameterSpec.ED25519, decoded));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof NoteVerifier key && key.text().equals(text());
    }

    @Override
    public int hashCode() {
        return text().hashCode();
    }

    @Override
    public String toString() {
        return text();
    }
}

package brightseam.seal;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;

/** A SHA-256 value (FIPS 180-4): 32 bytes, compared by what they are. */
public final class Hash {

    /** How many bytes it has. */
    public static final int LENGTH = 32;

    private final byte[] bytes;

    private Hash(byte[] bytes) {
        this.bytes = bytes;
    }

    /**
     * The hash of these 32 bytes.
     *
     * @throws IllegalArgumentException for another number of bytes
     */
    public static Hash of(byte[] bytes) {
        if (bytes.length != LENGTH) {
            throw new IllegalArgumentException("a hash has " + LENGTH + " bytes, not " + bytes.length);
        }
        return new Hash(bytes.clone());
    }

    /**
     * The hash written as 64 hexadecimal digits.
     *
     * @throws IllegalArgumentException for anything else
     */
    public static Hash fromHex(String digits) {
        return of(HexFormat.of().parseHex(digits));
    }

    /**
     * The hash written in base64 (RFC 4648, section 4, padded).
     *
     * @throws IllegalArgumentException for anything else
     */
    public static Hash fromBase64(String text) {
        return of(Base64.getDecoder().decode(text));
    }

    /** SHA-256 over {@code parts}, one behind the other. */
    public static Hash sha256(byte[]... parts) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (byte[] part : parts) {
                digest.update(part);
            }
            return new Hash(digest.digest());
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }

    /** A copy of the 32 bytes. */
    public byte[] bytes() {
        return bytes.clone();
    }

    /** 64 lower-case hexadecimal digits. */
    public String hex() {
        return HexFormat.of().formatHex(bytes);
    }

    /** Base64 (RFC 4648, section 4, padded). */
    public String base64() {
        return Base64.getEncoder().encodeToString(bytes);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Hash hash && Arrays.equals(bytes, hash.bytes);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(bytes);
    }

    @Override
    public String toString() {
        return hex();
    }
}

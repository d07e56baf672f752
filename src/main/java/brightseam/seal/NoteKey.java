package brightseam.seal;

import java.security.GeneralSecurityException;
import java.security.InvalidAlgorithmParameterException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.NoSuchAlgorithmException;
import java.security.PrivateKey;
import java.security.SecureRandom;
import java.security.Signature;
import java.security.spec.EdECPrivateKeySpec;
import java.security.spec.NamedParameterSpec;
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;

/**
 * A key that signs notes: Ed25519 (RFC 8032). Its text holds the secret; it never shows it otherwise.
 *
 * <p>Written {@code PRIVATE+KEY+name+id+key}, the key being base64 of the algorithm byte 1 and the 32 secret bytes.
 */
public final class NoteKey {

    private static final String FORM = "PRIVATE+KEY+";
    private static final int PARTS = 3;
    /** What stands before the 32 bytes of the point in the X.509 form of a public key: RFC 8410, section 4. */
    private static final int X509_PREFIX = 12;

    private final byte[] seed;
    private final NoteVerifier verifier;

    private NoteKey(String name, byte[] seed) {
        this.seed = seed.clone();
        this.verifier = new NoteVerifier(name, point(seed));
    }

    /** A new key named {@code name}, its secret taken from {@code random}. */
    public static NoteKey generate(String name, SecureRandom random) {
        byte[] seed = new byte[Hash.LENGTH];
        random.nextBytes(seed);
        return new NoteKey(name, seed);
    }

    /** The key named {@code name} of these 32 secret bytes: RFC 8032, section 5.1.5. */
    public static NoteKey of(String name, byte[] seed) {
        return new NoteKey(name, Hash.of(seed).bytes());
    }

    /** What {@code text} says; empty where it is no such key or the id does not fit. */
    public static Optional<NoteKey> parse(String text) {
        String stripped = text.strip();
        String[] parts = stripped.startsWith(FORM)
                ? stripped.substring(FORM.length()).split("\\+", PARTS)
                : new String[0];
        if (parts.length != PARTS) {
            return Optional.empty();
        }
        try {
            byte[] key = Base64.getDecoder().decode(parts[2]);
            if (key.length != Hash.LENGTH + 1 || key[0] != NoteVerifier.ED25519) {
                return Optional.empty();
            }
            return Optional.of(new NoteKey(parts[0], Arrays.copyOfRange(key, 1, key.length)))
                    .filter(read -> read.verifier().idHex().equals(parts[1]));
        } catch (IllegalArgumentException notOne) {
            return Optional.empty();
        }
    }

    /** The public half. */
    public NoteVerifier verifier() {
        return verifier;
    }

    /** The whole key as text, for its file alone. */
    public String secretText() {
        byte[] key = new byte[seed.length + 1];
        key[0] = NoteVerifier.ED25519;
        System.arraycopy(seed, 0, key, 1, seed.length);
        return FORM + verifier.name() + "+" + verifier.idHex() + "+" + Base64.getEncoder().encodeToString(key);
    }

    /** The 64 bytes of the signature over {@code message}: RFC 8032, section 5.1.6. */
    public byte[] sign(byte[] message) {
        try {
            PrivateKey key = KeyFactory.getInstance("Ed25519")
                    .generatePrivate(new EdECPrivateKeySpec(NamedParameterSpec.ED25519, seed));
            Signature signature = Signature.getInstance("Ed25519");
            signature.initSign(key);
            signature.update(message);
            return signature.sign();
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException("every Java platform of 15 or newer has Ed25519", impossible);
        }
    }

    /** The public half without the secret. */
    @Override
    public String toString() {
        return verifier.text();
    }

    /** The platform derives a point only when it makes a pair, from the bytes that it is given as random. */
    private static byte[] point(byte[] seed) {
        try {
            KeyPairGenerator generator = KeyPairGenerator.getInstance("Ed25519");
            generator.initialize(NamedParameterSpec.ED25519, new Given(seed));
            KeyPair pair = generator.generateKeyPair();
            byte[] encoded = pair.getPublic().getEncoded();
            return Arrays.copyOfRange(encoded, X509_PREFIX, encoded.length);
        } catch (NoSuchAlgorithmException | InvalidAlgorithmParameterException impossible) {
            throw new IllegalStateException("every Java platform of 15 or newer has Ed25519", impossible);
        }
    }

    private static final class Given extends SecureRandom {
        private final byte[] bytes;

        Given(byte[] bytes) {
            this.bytes = bytes;
        }

        @Override
        public void nextBytes(byte[] wanted) {
            System.arraycopy(bytes, 0, wanted, 0, wanted.length);
        }
    }
}

package brightseam.tls.shell;

import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.PrivateKey;
import java.security.Signature;
import java.security.cert.CertificateEncodingException;
import java.security.cert.X509Certificate;
import java.util.HexFormat;
import java.util.Locale;

/** A private key and the certificate of its public half. Never printed: its text names the certificate alone. */
record KeyAndCertificate(PrivateKey key, X509Certificate certificate) {

    private static final byte[] TRIED = {1};

    /** Whether the key belongs to the certificate; not so after a stop between the writing of the two. */
    boolean isPair() {
        try {
            Signature signing = Signature.getInstance("SHA256withECDSA");
            signing.initSign(key);
            signing.update(TRIED);
            byte[] signature = signing.sign();
            signing.initVerify(certificate.getPublicKey());
            signing.update(TRIED);
            return signing.verify(signature);
        } catch (GeneralSecurityException foreign) {
            return false;
        }
    }

    /** Whether {@code authority} signed the certificate. */
    boolean isVouchedForBy(KeyAndCertificate authority) {
        try {
            certificate.verify(authority.certificate().getPublicKey());
            return true;
        } catch (GeneralSecurityException other) {
            return false;
        }
    }

    /** The SHA-256 of {@code certificate} as devices show it: capitals, pairs parted by colons. */
    static String fingerprint(X509Certificate certificate) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(certificate.getEncoded());
            return HexFormat.ofDelimiter(":").formatHex(digest).toUpperCase(Locale.ROOT);
        } catch (NoSuchAlgorithmException | CertificateEncodingException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }

    @Override
    public String toString() {
        return "KeyAndCertificate[" + certificate.getSubjectX500Principal() + "]";
    }
}

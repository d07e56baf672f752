package brightseam.tls.shell;

import brightseam.kernel.shell.OwnerAlone;
import brightseam.tls.HostNames;
import brightseam.tls.Terms;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.security.spec.PKCS8EncodedKeySpec;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.stream.Stream;

/**
 * The folder of the shop's own authority and of the server's certificate: {@code authority.key}, {@code authority.crt},
 * {@code server.key}, {@code server.crt}, as PEM. Whoever has {@code authority.key} can stand for this server on every
 * tablet that is enrolled.
 */
public final class TlsFolder {

    private static final String AUTHORITY = "authority";
    private static final String SERVER = "server";
    private static final Base64.Encoder LINES = Base64.getMimeEncoder(64, new byte[] {'\n'});
    private static final int NAME_OF_HOST = 2;
    private static final int NAME_OF_ADDRESS = 7;

    private final Path folder;
    private KeyAndCertificate authority;
    private KeyAndCertificate server;

    private TlsFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * Opens {@code folder}; makes it, the authority and the server's certificate where they are missing or due.
     *
     * @throws UncheckedIOException where it cannot be read or written
     * @throws IllegalStateException where what is in it is not what this program wrote
     */
    public static TlsFolder open(Path folder, HostNames machine, Instant now) {
        TlsFolder opened = new TlsFolder(folder);
        try {
            Files.createDirectories(folder);
            OwnerAlone.close(folder);
            if (!Files.exists(folder.resolve(AUTHORITY + ".crt"))) {
                List<String> domains = new ArrayList<>(Terms.PRIVATE_DOMAINS);
                domains.addAll(machine.names());
                opened.write(AUTHORITY, Authority.make(domains, now));
            }
            opened.authority = opened.read(AUTHORITY);
            if (Files.exists(folder.resolve(SERVER + ".crt"))) {
                opened.server = opened.read(SERVER);
            }
            opened.renew(machine, now);
            return opened;
        } catch (IOException failure) {
            throw new UncheckedIOException("The folder " + folder + " cannot be used", failure);
        }
    }

    /** Makes the server's certificate anew where it is due; answers whether it did. */
    public synchronized boolean renew(HostNames machine, Instant now) {
        HostNames wanted = machine.under(Authority.domains(authority.certificate()));
        boolean vouchedFor = server != null && server.isPair() && server.isVouchedForBy(authority);
        if (vouchedFor && !Terms.isDue(server.certificate().getNotAfter().toInstant(), names(server.certificate()),
                wanted, now)) {
            return false;
        }
        try {
            server = Authority.vouch(authority, wanted, now);
            write(SERVER, server);
            return true;
        } catch (IOException failure) {
            throw new UncheckedIOException("The folder " + folder + " cannot be written", failure);
        }
    }

    /** The authority's certificate as PEM, for tablets to trust. */
    public String authorityPem() {
        return pem("CERTIFICATE", encoded(authority.certificate()));
    }

    /** The SHA-256 of the authority's certificate, to be compared by people. */
    public String fingerprint() {
        return KeyAndCertificate.fingerprint(authority.certificate());
    }

    /** The authority's certificate. */
    public X509Certificate authorityCertificate() {
        return authority.certificate();
    }

    /** The server's certificate. */
    public synchronized X509Certificate serverCertificate() {
        return server.certificate();
    }

    /** The server's key and its chain, for a socket; in memory alone, under {@code password}. */
    public synchronized KeyStore keyStore(char[] password) {
        try {
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(null, null);
            store.setKeyEntry(SERVER, server.key(), password,
                    new Certificate[] {server.certificate(), authority.certificate()});
            return store;
        } catch (GeneralSecurityException | IOException impossible) {
            throw new IllegalStateException("a key store in memory", impossible);
        }
    }

    static HostNames names(X509Certificate certificate) {
        try {
            List<String> names = new ArrayList<>();
            List<String> addresses = new ArrayList<>();
            for (List<?> name : certificate.getSubjectAlternativeNames()) {
                switch ((Integer) name.get(0)) {
                    case NAME_OF_HOST -> names.add((String) name.get(1));
                    case NAME_OF_ADDRESS -> addresses.add((String) name.get(1));
                    default -> throw new IllegalStateException("a name of another kind: " + name);
                }
            }
            return HostNames.of(names, addresses);
        } catch (GeneralSecurityException foreign) {
            throw new IllegalStateException("not a certificate that this program made", foreign);
        }
    }

    private KeyAndCertificate read(String name) throws IOException {
        try {
            String key = Files.readString(folder.resolve(name + ".key")).replaceAll("-----.*-----|\\s", "");
            byte[] certificate = Files.readAllBytes(folder.resolve(name + ".crt"));
            return new KeyAndCertificate(
                    KeyFactory.getInstance("EC").generatePrivate(new PKCS8EncodedKeySpec(
                            Base64.getDecoder().decode(key))),
                    (X509Certificate) CertificateFactory.getInstance("X.509").generateCertificate(
                            new ByteArrayInputStream(certificate)));
        } catch (GeneralSecurityException | IllegalArgumentException foreign) {
            throw new IllegalStateException("The files " + name + ".key and .crt in " + folder
                    + " cannot be read. Put them back from a backup, or delete all four files there and enrol every"
                    + " tablet again.", foreign);
        }
    }

    /** The key first and each file in one move, so that a stop in between leaves the old pair or a certificate due. */
    private void write(String name, KeyAndCertificate made) throws IOException {
        put(name + ".key", pem("PRIVATE KEY", made.key().getEncoded()));
        put(name + ".crt", pem("CERTIFICATE", encoded(made.certificate())));
    }

    private void put(String name, String text) throws IOException {
        Path written = Files.createTempFile(folder, name, ".new", OwnerAlone.file(folder));
        Files.writeString(written, text, StandardCharsets.US_ASCII);
        Files.move(written, folder.resolve(name), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    private static byte[] encoded(X509Certificate certificate) {
        try {
            return certificate.getEncoded();
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException("a certificate was read or made", impossible);
        }
    }

    private static String pem(String what, byte[] bytes) {
        return Stream.of("-----BEGIN " + what + "-----", LINES.encodeToString(bytes), "-----END " + what + "-----", "")
                .reduce((one, other) -> one + "\n" + other).orElseThrow();
    }
}

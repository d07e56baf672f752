package brightseam.tls.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.tls.HostNames;
import brightseam.tls.Terms;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.cert.CertPathValidator;
import java.security.cert.CertificateFactory;
import java.security.cert.PKIXParameters;
import java.security.cert.TrustAnchor;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.NameConstraintValidatorException;
import org.bouncycastle.asn1.x509.NameConstraints;
import org.bouncycastle.asn1.x509.PKIXNameConstraintValidator;
import org.bouncycastle.cert.jcajce.JcaX509ExtensionUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TlsFolderTest {

    private static final Instant NOW = Instant.parse("2031-03-04T12:00:00Z");
    private static final HostNames MACHINE =
            HostNames.of(List.of("localhost", "shop-server", "shop-server.local"), List.of("127.0.0.1", "10.1.2.3"));

    @TempDir
    private Path data;

    @Test
    void the_first_start_makes_an_authority_that_vouches_for_the_machine() throws Exception {
        TlsFolder folder = open(MACHINE, NOW);
        X509Certificate server = folder.serverCertificate();
        assertThat(TlsFolder.names(server)).isEqualTo(MACHINE);
        validate(server, folder.authorityCertificate());
        assertThat(folder.authorityCertificate().getBasicConstraints()).isZero();
        assertThat(Duration.between(server.getNotBefore().toInstant(), server.getNotAfter().toInstant()))
                .isEqualTo(Terms.SERVER_LIFE);
        assertThat(folder.fingerprint()).matches("([0-9A-F]{2}:){31}[0-9A-F]{2}");
        assertThat(folder.authorityPem()).startsWith("-----BEGIN CERTIFICATE-----\n").doesNotContain("PRIVATE");
    }

    @Test
    void keys_are_readable_by_their_owner_alone() throws IOException {
        open(MACHINE, NOW);
        Path tls = data.resolve("tls");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(tls))).isEqualTo("rwx------");
        try (Stream<Path> files = Files.list(tls)) {
            assertThat(files.toList()).hasSize(4).allSatisfy(file -> assertThat(
                    PosixFilePermissions.toString(Files.getPosixFilePermissions(file))).isEqualTo("rw-------"));
        }
    }

    @Test
    void the_next_start_finds_both_again() {
        TlsFolder first = open(MACHINE, NOW);
        TlsFolder second = open(MACHINE, NOW.plus(Duration.ofDays(300)));
        assertThat(second.fingerprint()).isEqualTo(first.fingerprint());
        assertThat(second.serverCertificate()).isEqualTo(first.serverCertificate());
    }

    @Test
    void the_certificate_is_renewed_before_its_end_and_for_a_new_address_by_the_same_authority() throws Exception {
        TlsFolder folder = open(MACHINE, NOW);
        X509Certificate first = folder.serverCertificate();
        assertThat(folder.renew(MACHINE, NOW.plus(Duration.ofDays(360)))).isFalse();
        Instant later = NOW.plus(Duration.ofDays(368));
        assertThat(folder.renew(MACHINE, later)).isTrue();
        HostNames moved = HostNames.of(MACHINE.names(), List.of("192.168.4.4"));
        assertThat(folder.renew(moved, later)).isTrue();
        assertThat(folder.serverCertificate()).isNotEqualTo(first);
        assertThat(TlsFolder.names(folder.serverCertificate()).addresses()).containsExactly("192.168.4.4");
        validate(folder.serverCertificate(), folder.authorityCertificate());
    }

    @Test
    void the_authority_stands_for_no_name_and_no_address_outside_a_shop() throws Exception {
        KeyAndCertificate authority = Authority.make(List.of("local"), NOW);
        validate(vouched(authority, List.of("a.local"), List.of("10.0.0.1")), authority.certificate());
        for (HostNames foreign : List.of(HostNames.of(List.of("bank.example"), List.of()),
                HostNames.of(List.of("a.local"), List.of("93.184.216.34")))) {
            assertThatThrownBy(() -> validate(
                    Authority.vouch(authority, foreign, NOW).certificate(), authority.certificate()))
                    .isInstanceOf(NameConstraintValidatorException.class);
        }
    }

    @Test
    void a_new_name_that_the_authority_may_not_vouch_for_is_left_out() {
        open(MACHINE, NOW);
        HostNames renamed = HostNames.of(List.of("localhost", "elsewhere.example"), List.of("10.1.2.3"));
        assertThat(TlsFolder.names(open(renamed, NOW).serverCertificate()).names())
                .contains("localhost").doesNotContain("elsewhere.example");
    }

    @Test
    void a_stop_between_key_and_certificate_heals_at_the_next_start() throws Exception {
        TlsFolder first = open(MACHINE, NOW);
        Path key = data.resolve("tls/server.key");
        Files.copy(data.resolve("tls/authority.key"), key, StandardCopyOption.REPLACE_EXISTING);
        TlsFolder healed = open(MACHINE, NOW);
        assertThat(healed.serverCertificate()).isNotEqualTo(first.serverCertificate());
        assertThat(healed.fingerprint()).isEqualTo(first.fingerprint());
        validate(healed.serverCertificate(), healed.authorityCertificate());
    }

    @Test
    void a_spoilt_authority_is_told_in_words_and_never_replaced() throws IOException {
        open(MACHINE, NOW);
        Files.writeString(data.resolve("tls/authority.key"), "spoilt");
        assertThatThrownBy(() -> open(MACHINE, NOW)).isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("Put them back from a backup");
    }

    private TlsFolder open(HostNames machine, Instant now) {
        return TlsFolder.open(data.resolve("tls"), machine, now);
    }

    private static X509Certificate vouched(KeyAndCertificate authority, List<String> names, List<String> addresses) {
        return Authority.vouch(authority, HostNames.of(names, addresses), NOW).certificate();
    }

    /** By the JDK's own rules, and by the constraints, which the JDK does not look at in a trust anchor. */
    private static void validate(X509Certificate server, X509Certificate authority) throws Exception {
        PKIXParameters parameters = new PKIXParameters(Set.of(new TrustAnchor(authority, null)));
        parameters.setRevocationEnabled(false);
        parameters.setDate(Date.from(server.getNotBefore().toInstant().plus(Duration.ofHours(2))));
        CertPathValidator.getInstance("PKIX").validate(
                CertificateFactory.getInstance("X.509").generateCertPath(List.of(server)), parameters);
        PKIXNameConstraintValidator constraints = new PKIXNameConstraintValidator();
        constraints.intersectPermittedSubtree(NameConstraints.getInstance(
                JcaX509ExtensionUtils.parseExtensionValue(authority.getExtensionValue("2.5.29.30")))
                .getPermittedSubtrees());
        for (GeneralName name : GeneralNames.getInstance(JcaX509ExtensionUtils.parseExtensionValue(
                server.getExtensionValue("2.5.29.17"))).getNames()) {
            constraints.checkPermitted(name);
        }
    }
}

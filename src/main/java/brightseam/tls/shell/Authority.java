package brightseam.tls.shell;

import brightseam.tls.HostNames;
import brightseam.tls.Terms;
import java.io.IOException;
import java.math.BigInteger;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PublicKey;
import java.security.SecureRandom;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Date;
import java.util.List;
import java.util.stream.Stream;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.GeneralSubtree;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.asn1.x509.NameConstraints;
import org.bouncycastle.cert.X509v3CertificateBuilder;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509ExtensionUtils;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/**
 * Makes the shop's own certificate authority and what it vouches for (RFC 5280): keys on P-256, signed with SHA-256.
 * The authority is constrained to the names and networks of a shop, so that its key, where it is stolen, cannot stand
 * for a bank.
 */
final class Authority {

    private static final SecureRandom RANDOM = new SecureRandom();
    /** Serial numbers of up to 20 octets (RFC 5280, 4.1.2.2); 64 random bits are asked for, here are 127. */
    private static final int SERIAL_BITS = 127;

    private Authority() {}

    /** A new authority, whose names may lie under {@code domains} and in private networks. */
    static KeyAndCertificate make(List<String> domains, Instant now) {
        String serial = Long.toString(RANDOM.nextLong() >>> 28, 36);
        X500Name name = new X500Name("CN=Brightseam shop authority " + serial);
        return sealed(pair -> {
            X509v3CertificateBuilder builder = builder(name, name, now, Terms.AUTHORITY_LIFE, pair.getPublic());
            JcaX509ExtensionUtils keys = new JcaX509ExtensionUtils();
            builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(0));
            builder.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.keyCertSign | KeyUsage.cRLSign));
            builder.addExtension(Extension.subjectKeyIdentifier, false, keys.createSubjectKeyIdentifier(
                    pair.getPublic()));
            builder.addExtension(Extension.nameConstraints, true, new NameConstraints(permitted(domains), null));
            return new Made(builder, pair);
        });
    }

    /** A new key for the machine that is called {@code names}, vouched for by {@code authority}. */
    static KeyAndCertificate vouch(KeyAndCertificate authority, HostNames names, Instant now) {
        X500Name issuer = X500Name.getInstance(authority.certificate().getSubjectX500Principal().getEncoded());
        X500Name subject = new X500Name("CN=" + names.names().first());
        return sealed(pair -> {
            X509v3CertificateBuilder builder = builder(issuer, subject, now, Terms.SERVER_LIFE, pair.getPublic());
            JcaX509ExtensionUtils keys = new JcaX509ExtensionUtils();
            builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(false));
            builder.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.digitalSignature));
            builder.addExtension(Extension.extendedKeyUsage, false,
                    new ExtendedKeyUsage(KeyPurposeId.id_kp_serverAuth));
            builder.addExtension(Extension.authorityKeyIdentifier, false, keys.createAuthorityKeyIdentifier(
                    authority.certificate()));
            builder.addExtension(Extension.subjectAlternativeName, false, alternatives(names));
            return new Made(builder, new KeyPair(pair.getPublic(), authority.key()), pair);
        });
    }

    /** The domains that {@code authority} may vouch for. */
    static List<String> domains(X509Certificate authority) {
        try {
            NameConstraints constraints = NameConstraints.getInstance(JcaX509ExtensionUtils.parseExtensionValue(
                    authority.getExtensionValue(Extension.nameConstraints.getId())));
            return Arrays.stream(constraints.getPermittedSubtrees()).map(GeneralSubtree::getBase)
                    .filter(base -> base.getTagNo() == GeneralName.dNSName)
                    .map(base -> base.getName().toString()).toList();
        } catch (IOException foreign) {
            throw new IllegalStateException("not an authority that this program made", foreign);
        }
    }

    private record Made(X509v3CertificateBuilder builder, KeyPair signer, KeyPair own) {
        Made(X509v3CertificateBuilder builder, KeyPair own) {
            this(builder, own, own);
        }
    }

    /** Describes a certificate for a new pair of keys. */
    private interface Description {
        Made of(KeyPair pair) throws GeneralSecurityException, IOException;
    }

    private static KeyAndCertificate sealed(Description description) {
        try {
            KeyPairGenerator keys = KeyPairGenerator.getInstance("EC");
            keys.initialize(new ECGenParameterSpec("secp256r1"), RANDOM);
            Made made = description.of(keys.generateKeyPair());
            X509Certificate certificate = new JcaX509CertificateConverter().getCertificate(made.builder().build(
                    new JcaContentSignerBuilder("SHA256withECDSA").build(made.signer().getPrivate())));
            return new KeyAndCertificate(made.own().getPrivate(), certificate);
        } catch (GeneralSecurityException | OperatorCreationException | IOException failure) {
            throw new IllegalStateException("no certificate could be made", failure);
        }
    }

    private static X509v3CertificateBuilder builder(
            X500Name issuer, X500Name subject, Instant now, Duration life, PublicKey key) {
        Instant from = now.minus(Terms.VALID_BEFORE);
        return new JcaX509v3CertificateBuilder(issuer, new BigInteger(SERIAL_BITS, RANDOM).add(BigInteger.ONE),
                Date.from(from), Date.from(from.plus(life)), subject, key);
    }

    private static GeneralSubtree[] permitted(List<String> domains) {
        return Stream.concat(
                        domains.stream().map(domain -> new GeneralName(GeneralName.dNSName, domain)),
                        Terms.PRIVATE_NETWORKS.stream().map(network ->
                                new GeneralName(GeneralName.iPAddress, network)))
                .map(GeneralSubtree::new).toArray(GeneralSubtree[]::new);
    }

    private static GeneralNames alternatives(HostNames names) {
        return new GeneralNames(Stream.concat(
                        names.names().stream().map(name -> new GeneralName(GeneralName.dNSName, name)),
                        names.addresses().stream().map(address -> new GeneralName(GeneralName.iPAddress, address)))
                .toArray(GeneralName[]::new));
    }
}

package brightseam.app;

import brightseam.tls.shell.Machine;
import brightseam.tls.shell.TlsFolder;
import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.apache.catalina.connector.Connector;
import org.apache.coyote.http11.AbstractHttp11Protocol;
import org.apache.tomcat.util.net.SSLHostConfig;
import org.apache.tomcat.util.net.SSLHostConfigCertificate;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.core.env.Environment;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;

/**
 * Listens on HTTPS beside HTTP: by the certificate of the shop's own authority, which is made at the first start, or by
 * the shop's own certificate, given as two PEM files. Looks every hour whether it is due.
 */
@Component
class HttpsSetup implements WebServerFactoryCustomizer<TomcatServletWebServerFactory> {

    static final int OFF = -1;
    private static final int USUAL_PORT = 8_443;
    private static final String PORT = "brightseam.https-port";
    private static final long LOOKED_AT_MILLIS = 3_600_000;
    private static final Logger LOG = LoggerFactory.getLogger(HttpsSetup.class);

    private final Optional<Integer> asked;
    private final String certificateFile;
    private final String keyFile;
    private final Optional<TlsFolder> own;
    private Connector connector;

    HttpsSetup(ObjectProvider<DataFolder> taken, Environment settings, @Value("${brightseam.data}") Path data,
            @Value("${brightseam.https-certificate:}") String certificateFile,
            @Value("${brightseam.https-key:}") String keyFile) {
        taken.ifAvailable(folder -> LOG.debug("the data folder is taken before keys are put into it"));
        this.asked = Optional.ofNullable(settings.getProperty(PORT, Integer.class));
        this.certificateFile = certificateFile;
        this.keyFile = keyFile;
        if (certificateFile.isBlank() != keyFile.isBlank()) {
            throw new UnusableData("brightseam.https-certificate and brightseam.https-key belong together: name both"
                    + " files, or neither.", null);
        }
        this.own = isOn() && certificateFile.isBlank()
                ? Optional.of(TlsFolder.open(data.resolve("tls"), Machine.names(), Instant.now()))
                : Optional.empty();
    }

    @Override
    public void customize(TomcatServletWebServerFactory server) {
        if (!isOn()) {
            return;
        }
        connector = new Connector(TomcatServletWebServerFactory.DEFAULT_PROTOCOL);
        connector.setPort(asked.orElseGet(HttpsSetup::usualPortOrAny));
        connector.setScheme("https");
        connector.setSecure(true);
        AbstractHttp11Protocol<?> protocol = (AbstractHttp11Protocol<?>) connector.getProtocolHandler();
        protocol.setSSLEnabled(true);
        if (server.getAddress() != null) {
            protocol.setAddress(server.getAddress());
        }
        connector.addSslHostConfig(host());
        server.addAdditionalConnectors(connector);
    }

    /** Whether this server listens on HTTPS. */
    boolean isOn() {
        return asked.orElse(USUAL_PORT) != OFF;
    }

    /** The port it listens on; {@link #OFF} where it does not. */
    int port() {
        return connector == null ? OFF : connector.getLocalPort();
    }

    /** The shop's own authority; empty where HTTPS is off or goes by a certificate of the shop's. */
    Optional<TlsFolder> authority() {
        return own;
    }

    /** Renews the certificate where it is due; open connections stay as they are. */
    @Scheduled(fixedDelay = LOOKED_AT_MILLIS, initialDelay = LOOKED_AT_MILLIS)
    void renewWhereDue() {
        own.filter(folder -> folder.renew(Machine.names(), Instant.now())).ifPresent(renewed -> {
            LOG.warn("the certificate for HTTPS was renewed; it ends {}", renewed.serverCertificate().getNotAfter());
            ((AbstractHttp11Protocol<?>) connector.getProtocolHandler()).addSslHostConfig(host(), true);
        });
    }

    private SSLHostConfig host() {
        SSLHostConfig host = new SSLHostConfig();
        host.setProtocols("TLSv1.2+TLSv1.3");
        SSLHostConfigCertificate certificate =
                new SSLHostConfigCertificate(host, SSLHostConfigCertificate.Type.UNDEFINED);
        own.ifPresentOrElse(folder -> {
            String password = UUID.randomUUID().toString();
            certificate.setCertificateKeystore(folder.keyStore(password.toCharArray()));
            certificate.setCertificateKeystorePassword(password);
        }, () -> {
            certificate.setCertificateFile(Path.of(certificateFile).toAbsolutePath().toString());
            certificate.setCertificateKeyFile(Path.of(keyFile).toAbsolutePath().toString());
        });
        host.addCertificate(certificate);
        return host;
    }

    private static int usualPortOrAny() {
        try (ServerSocket free = new ServerSocket(USUAL_PORT)) {
            return free.getLocalPort();
        } catch (IOException taken) {
            LOG.warn("port {} is taken; HTTPS is on another. Choose one with {}", USUAL_PORT, PORT);
            return 0;
        }
    }
}

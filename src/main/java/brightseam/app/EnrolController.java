package brightseam.app;

import brightseam.tls.shell.Machine;
import brightseam.tls.shell.TlsFolder;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/**
 * The page that enrols a tablet: plain, without scripts, and readable over HTTP, since whoever opens it trusts nothing
 * yet. What is downloaded is a certificate, which is public; people compare its fingerprint with the server's console.
 */
@RestController
class EnrolController {

    private static final MediaType CERTIFICATE = MediaType.parseMediaType("application/x-x509-ca-cert");

    private final HttpsSetup https;
    private final String shopName;

    EnrolController(HttpsSetup https, @Value("${brightseam.shop-name}") String shopName) {
        this.https = https;
        this.shopName = shopName;
    }

    /** The page, for the addresses of this machine. */
    @GetMapping("/enrol")
    ResponseEntity<String> page(HttpServletRequest request) {
        int port = https.port();
        List<String> addresses = port == HttpsSetup.OFF ? List.of() : Stream.concat(
                        Machine.privateAddresses().stream(), Stream.of("localhost"))
                .map(host -> "https://" + host + ":" + port + "/").toList();
        String enrol = Machine.privateAddresses().stream().findFirst()
                .map(host -> "http://" + host + ":" + plainPort(request) + "/enrol").orElse("");
        return ResponseEntity.ok().cacheControl(CacheControl.noStore()).contentType(MediaType.TEXT_HTML)
                .body(EnrolPage.html(shopName, addresses, enrol, https.authority().map(TlsFolder::fingerprint)));
    }

    /** The authority's certificate; 404 where the shop has its own. */
    @GetMapping("/enrol/authority.crt")
    ResponseEntity<String> certificate() {
        Optional<String> pem = https.authority().map(TlsFolder::authorityPem);
        return pem.map(text -> ResponseEntity.ok().cacheControl(CacheControl.noStore()).contentType(CERTIFICATE)
                        .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"shop-authority.crt\"")
                        .body(text))
                .orElseGet(() -> ResponseEntity.notFound().build());
    }

    private static int plainPort(HttpServletRequest request) {
        return request.isSecure() ? 0 : request.getLocalPort();
    }
}

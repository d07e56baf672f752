package brightseam.app;

import brightseam.people.shell.FirstRun;
import brightseam.tls.shell.Machine;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.boot.web.server.servlet.context.ServletWebServerApplicationContext;
import org.springframework.context.event.EventListener;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/**
 * Prints, once the server answers, where to open it, on this machine and from tablets on the same network; and, where
 * nobody has a badge yet, where the first administrator is made.
 */
@Component
@ConditionalOnProperty(name = "brightseam.greeting", havingValue = "true", matchIfMissing = true)
class Greeting {

    private final FirstRun firstRun;
    private final String boundTo;
    private final boolean encrypted;
    private final HttpsSetup https;

    Greeting(FirstRun firstRun, @Value("${server.address:}") String boundTo,
            @Value("${server.ssl.enabled:false}") boolean encrypted, HttpsSetup https) {
        this.firstRun = firstRun;
        this.boundTo = boundTo;
        this.encrypted = encrypted;
        this.https = https;
    }

    @EventListener
    @Order(Ordered.HIGHEST_PRECEDENCE)
    void ready(ApplicationReadyEvent ready) {
        if (ready.getApplicationContext() instanceof ServletWebServerApplicationContext context) {
            int port = context.getWebServer().getPort();
            say("");
            say("Brightseam is running. Open       " + address("localhost", port));
            if (boundTo.isEmpty()) {
                Machine.privateAddresses().forEach(host -> tablet(host, port));
            }
            https.authority().ifPresent(folder -> {
                say("Tablets are to trust the certificate with this SHA-256, and no other:");
                say("  " + folder.fingerprint());
            });
            if (firstRun.isNeeded()) {
                say("Nobody has a badge yet. Make the first administrator at  "
                        + address("localhost", port) + "first-run");
                say("It asks for this code:             " + firstRun.code());
            }
        }
    }

    private void tablet(String host, int port) {
        if (https.isOn()) {
            say("From a tablet in this network     https://" + host + ":" + https.port() + "/");
            say("  once for each tablet, before    " + address(host, port) + "enrol");
        } else {
            say("From a tablet in this network     " + address(host, port));
        }
    }

    private static void say(String line) {
        System.out.println(line);
    }

    private String address(String host, int port) {
        return (encrypted ? "https" : "http") + "://" + host + ":" + port + "/";
    }
}

package brightseam.app;

import brightseam.people.shell.FirstRun;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.List;
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

    Greeting(FirstRun firstRun, @Value("${server.address:}") String boundTo,
            @Value("${server.ssl.enabled:false}") boolean encrypted) {
        this.firstRun = firstRun;
        this.boundTo = boundTo;
        this.encrypted = encrypted;
    }

    @EventListener
    @Order(Ordered.HIGHEST_PRECEDENCE)
    void ready(ApplicationReadyEvent ready) {
        if (ready.getApplicationContext() instanceof ServletWebServerApplicationContext context) {
            int port = context.getWebServer().getPort();
            say("");
            say("Brightseam is running. Open       " + address("localhost", port));
            if (boundTo.isEmpty()) {
                ownAddresses().forEach(host -> say("From a tablet in this network     " + address(host, port)));
            }
            if (firstRun.isNeeded()) {
                say("Nobody has a badge yet. Make the first administrator at  "
                        + address("localhost", port) + "first-run");
                say("It asks for this code:             " + firstRun.code());
            }
        }
    }

    private static void say(String line) {
        System.out.println(line);
    }

    private String address(String host, int port) {
        return (encrypted ? "https" : "http") + "://" + host + ":" + port + "/";
    }

    /** This machine's IPv4 addresses in private networks (RFC 1918). */
    private static List<String> ownAddresses() {
        try {
            return NetworkInterface.networkInterfaces().filter(Greeting::isUp)
                    .flatMap(NetworkInterface::inetAddresses)
                    .filter(InetAddress::isSiteLocalAddress).map(InetAddress::getHostAddress)
                    .filter(host -> host.indexOf(':') < 0).sorted().toList();
        } catch (SocketException notTold) {
            return List.of();
        }
    }

    private static boolean isUp(NetworkInterface network) {
        try {
            return network.isUp();
        } catch (SocketException notTold) {
            return false;
        }
    }
}

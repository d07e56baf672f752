package brightseam.crash;

import brightseam.app.Brightseam;
import java.io.IOException;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.boot.web.server.servlet.context.ServletWebServerApplicationContext;
import org.springframework.context.ApplicationListener;

/**
 * The real server in a process of its own, with {@link CrashDesk} beside it. Prints the port that it listens on, and
 * halts when the process that started it is gone, so that an interrupted run leaves none behind.
 */
public final class CrashServer {

    /** Begins the line that tells the port. */
    static final String PORT = "listens on ";

    private CrashServer() {}

    /** Takes the server's arguments. */
    public static void main(String[] args) {
        Thread.ofPlatform().daemon().start(CrashServer::haltWithTheParent);
        SpringApplication server = new SpringApplication(Brightseam.class);
        server.addListeners((ApplicationListener<ApplicationReadyEvent>) ready -> {
            var context = (ServletWebServerApplicationContext) ready.getApplicationContext();
            System.out.println(PORT + context.getWebServer().getPort());
            System.out.flush();
        });
        server.run(args);
    }

    /** The parent holds the other end of the standard input and never writes. */
    private static void haltWithTheParent() {
        try {
            int read = 0;
            while (read >= 0) {
                read = System.in.read();
            }
        } catch (IOException gone) {
            // The same as its end.
        }
        Runtime.getRuntime().halt(1);
    }
}

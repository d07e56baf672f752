package brightseam.app;

import com.vaadin.flow.component.page.AppShellConfigurator;
import com.vaadin.flow.component.page.Push;
import com.vaadin.flow.shared.ui.Transport;
import com.vaadin.flow.spring.annotation.EnableVaadin;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.scheduling.annotation.EnableScheduling;

/** Starts the shop server. */
@EnableScheduling
@SpringBootApplication(scanBasePackages = "brightseam")
@EnableVaadin("brightseam")
@Push(transport = Transport.WEBSOCKET_XHR)
public class Brightseam implements AppShellConfigurator {

    /**
     * Runs the server; arguments are Spring Boot properties such as {@code --server.port=8080}. Where the first is the
     * word of one of the {@link Commands}, that runs instead and ends the process.
     */
    public static void main(String[] args) {
        Commands.asked(args).ifPresentOrElse(
                command -> System.exit(command.run(args, new PrintStream(System.out, true, StandardCharsets.UTF_8))),
                () -> SpringApplication.run(Brightseam.class, args));
    }
}

package brightseam.app;

import brightseam.procedure.shell.CheckProcedures;
import com.vaadin.flow.component.page.AppShellConfigurator;
import com.vaadin.flow.component.page.Push;
import com.vaadin.flow.shared.ui.Transport;
import com.vaadin.flow.spring.annotation.EnableVaadin;
import java.util.Arrays;
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
     * Runs the server; arguments are Spring Boot properties such as {@code --server.port=8080}. With {@code
     * check-procedures <folder>} it checks that folder instead and ends.
     */
    public static void main(String[] args) {
        if (args.length > 0 && args[0].equals(CheckProcedures.COMMAND)) {
            CheckProcedures.main(Arrays.copyOfRange(args, 1, args.length));
            return;
        }
        SpringApplication.run(Brightseam.class, args);
    }
}

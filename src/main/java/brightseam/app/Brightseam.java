package brightseam.app;

import com.vaadin.flow.component.page.AppShellConfigurator;
import com.vaadin.flow.component.page.Push;
import com.vaadin.flow.shared.ui.Transport;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts the shop server. */
@SpringBootApplication(scanBasePackages = "brightseam")
@Push(transport = Transport.WEBSOCKET_XHR)
public class Brightseam implements AppShellConfigurator {

    /** Runs the server; arguments are Spring Boot properties such as {@code --server.port=8080}. */
    public static void main(String[] args) {
        SpringApplication.run(Brightseam.class, args);
    }
}

package brightseam.app;

import org.apache.catalina.Engine;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.stereotype.Component;

/**
 * Ends the session's cookie with a full stop and the node's name, {@code brightseam.node}, so that a proxy in front of
 * several nodes can send a tablet back to the one that it was on. That is for speed alone: any node takes it over.
 */
@Component
@ConditionalOnProperty("brightseam.node")
class NodeName implements WebServerFactoryCustomizer<TomcatServletWebServerFactory> {

    private final String name;

    NodeName(@Value("${brightseam.node}") String name) {
        if (!name.matches("[a-z0-9]{1,16}")) {
            throw new IllegalArgumentException("brightseam.node: 1 to 16 small letters and digits");
        }
        this.name = name;
    }

    @Override
    public void customize(TomcatServletWebServerFactory factory) {
        factory.addContextCustomizers(context -> {
            if (context.getParent().getParent() instanceof Engine engine) {
                engine.setJvmRoute(name);
            }
        });
    }
}

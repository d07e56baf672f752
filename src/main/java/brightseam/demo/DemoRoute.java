package brightseam.demo;

import com.vaadin.flow.router.RouteConfiguration;
import com.vaadin.flow.server.ServiceInitEvent;
import com.vaadin.flow.server.VaadinServiceInitListener;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;

/** Makes {@code /demo} exist in the demo shop, and nowhere else. */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
final class DemoRoute implements VaadinServiceInitListener {

    @Override
    public void serviceInit(ServiceInitEvent start) {
        RouteConfiguration.forApplicationScope().setAnnotatedRoute(DemoView.class);
    }
}

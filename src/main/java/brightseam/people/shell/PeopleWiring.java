package brightseam.people.shell;

import java.time.Instant;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What people's services are given besides each other. */
@Configuration(proxyBeanMethods = false)
class PeopleWiring {

    @Bean
    RealTime realTime() {
        return Instant::now;
    }
}

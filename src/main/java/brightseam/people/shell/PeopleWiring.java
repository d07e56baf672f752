package brightseam.people.shell;

import brightseam.people.PinLife;
import java.nio.file.Path;
import java.time.Instant;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What people's services are given besides each other. */
@Configuration(proxyBeanMethods = false)
class PeopleWiring {

    @Bean
    RealTime realTime() {
        return Instant::now;
    }

    @Bean
    PinLife pinLife(@Value("${brightseam.pin-days:365}") int days,
            @Value("${brightseam.pin-warning-days:14}") int warningDays) {
        return new PinLife(days, warningDays);
    }

    /** Refuses to start where PINs are of a pepper that is gone: nobody could sign in, and nobody would know why. */
    @Bean
    Pins pins(JdbcClient jdbc, RealTime time, PinLife life,
            @Value("${brightseam.keys:${brightseam.data:./data}/keys}") Path keys,
            @Value("${brightseam.pin-strength:10}") int strength,
            @Value("${brightseam.pepper-lost:false}") boolean pepperLost) {
        Pins pins = new Pins(jdbc, time, new PinHashes(Pepper.in(keys), strength), life);
        if (!pepperLost && pins.withAnotherPepper() > 0) {
            throw new IllegalStateException(keys.resolve(Pepper.FILE) + " is not the one that the PINs in this"
                    + " database were hashed with: restore it from its copy. Where it is lost for good, start with"
                    + " --brightseam.pepper-lost=true --brightseam.first-pin-for=<badge of an administrator>.");
        }
        return pins;
    }
}

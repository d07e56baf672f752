package brightseam.app;

import static brightseam.kernel.Samples.ORIGIN;
import static org.junit.jupiter.api.Assertions.assertEquals;

import brightseam.bins.shell.Bins;
import brightseam.kernel.StationId;
import brightseam.kit.shell.Kits;
import brightseam.ledger.shell.FreshDatabase;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.MemoryLedger;
import brightseam.ledger.shell.Projection;
import brightseam.line.StationCommand;
import brightseam.line.shell.Baths;
import brightseam.line.shell.Stations;
import brightseam.material.shell.Heats;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.AnnotationConfigApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.simple.JdbcClient;

class RegisterWiringTest {

    @Configuration
    @Import({Bins.class, Heats.class, Stations.class, Baths.class, Kits.class})
    static class Shop {
        @Bean
        JdbcClient jdbc() {
            return FreshDatabase.migrated();
        }

        @Bean
        Ledger ledger(ObjectProvider<Projection> projections) {
            return new MemoryLedger(projections.stream().toArray(Projection[]::new));
        }
    }

    @Test
    void the_ledger_is_given_the_rows_of_all_registers() {
        try (AnnotationConfigApplicationContext shop = new AnnotationConfigApplicationContext(Shop.class)) {
            assertEquals(6, shop.getBeansOfType(Projection.class).size());
            Stations stations = shop.getBean(Stations.class);
            stations.execute(new StationCommand.RegisterStation(
                    new StationId("S-SAW-1"), "saw", "Cold saw", false, ORIGIN));
            assertEquals(List.of("Cold saw"), stations.all().stream().map(s -> s.title()).toList());
        }
    }
}

package brightseam.ledger.shell;

import javax.sql.DataSource;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Makes the one {@link Lead}, as the database asks for. */
@Configuration(proxyBeanMethods = false)
class LeadSetup {

    @Bean
    Lead lead(DataSource source) {
        return WriteTurn.isShared(source) ? new LeadLock(source) : () -> true;
    }
}

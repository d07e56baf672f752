package brightseam.procedure.shell;

import brightseam.ledger.shell.Ledger;
import brightseam.procedure.Vocabulary;
import java.nio.file.Path;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Wires the shared tables and the library into the application. */
@Configuration(proxyBeanMethods = false)
class ProcedureSetup {

    @Bean
    Vocabulary vocabulary() {
        return SharedTables.read();
    }

    @Bean
    ProcedureLibrary procedureLibrary(
            @Value("${brightseam.procedures:./procedures}") Path folder,
            Vocabulary vocabulary,
            Ledger ledger,
            ProcedureRows rows) {
        return new ProcedureLibrary(folder, vocabulary, ledger, rows::ids);
    }
}

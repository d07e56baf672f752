package brightseam.app;

import brightseam.check.shell.Backup;
import brightseam.check.shell.ControlServer;
import jakarta.annotation.PreDestroy;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.sql.DataSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;

/** Lets commands of this machine ask the running server, for instance for a backup. */
@Component
class ControlSetup {

    private static final Logger LOG = LoggerFactory.getLogger(ControlSetup.class);
    /** What a restored shop should be started with again. */
    private static final List<String> SETTINGS = List.of("brightseam.shop", "brightseam.shop-name",
            "brightseam.procedures", "brightseam.weld-colours", "brightseam.line-layout", "brightseam.witness",
            "brightseam.ledger-name");

    private final DataSource database;
    private final Environment environment;
    private ControlServer control;

    ControlSetup(DataSource database, Environment environment) {
        this.database = database;
        this.environment = environment;
    }

    @EventListener
    void ready(ApplicationReadyEvent ready) {
        try {
            control = new ControlServer(data(), Map.of(
                    BackupCommand.COMMAND, this::backup));
        } catch (IOException failure) {
            LOG.error("commands of this machine cannot ask this server", failure);
        }
    }

    @PreDestroy
    void end() throws IOException {
        if (control != null) {
            control.close();
        }
    }

    /** Packs this shop into {@code target}. */
    Backup.Made backup(Path target, boolean withKeys) throws IOException {
        return Backup.make(new Backup.Source(database, data(), keys(), settings(), withKeys), target);
    }

    private int backup(List<String> arguments, PrintStream out) throws IOException {
        if (arguments.size() != 2) {
            throw new IOException("a file and whether keys are wanted");
        }
        backup(Path.of(arguments.get(0)), Boolean.parseBoolean(arguments.get(1))).words().forEach(out::println);
        return 0;
    }

    private Map<String, String> settings() {
        Map<String, String> settings = new LinkedHashMap<>();
        SETTINGS.forEach(name -> {
            String value = environment.getProperty(name, "");
            if (!value.isBlank()) {
                settings.put(name, value);
            }
        });
        return settings;
    }

    private Path data() {
        return Path.of(environment.getProperty("brightseam.data", "./data")).toAbsolutePath().normalize();
    }

    private Path keys() {
        String folder = environment.getProperty("brightseam.keys", "");
        return folder.isBlank() ? data().resolve("keys") : Path.of(folder.strip());
    }
}

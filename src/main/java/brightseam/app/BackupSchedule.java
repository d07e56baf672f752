package brightseam.app;

import brightseam.check.shell.Backup;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnExpression;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;

/**
 * Backs up by itself into {@code brightseam.backup-folder}, every {@code brightseam.backup-hours}, and keeps the last
 * {@code brightseam.backup-keep}. Deletes only files of the names that it gives itself, and only after a new one is
 * whole.
 */
@Component
@ConditionalOnExpression("'${brightseam.backup-folder:}' != ''")
public class BackupSchedule {

    private static final Logger LOG = LoggerFactory.getLogger(BackupSchedule.class);
    private static final String NAME = "brightseam-\\d{8}-\\d{6}\\.zip";
    private static final long LOOK_MILLIS = 60_000;

    private final ControlSetup shop;
    private final Path folder;
    private final Duration every;
    private final int keep;
    private volatile Standing standing = new Standing(Optional.empty(), Optional.empty());

    /** The last backup that is there, and why the last attempt failed; empty where it did not. */
    public record Standing(Optional<Instant> last, Optional<String> failure) {}

    BackupSchedule(ControlSetup shop, @Value("${brightseam.backup-folder:}") Path folder,
            @Value("${brightseam.backup-hours:24}") long hours, @Value("${brightseam.backup-keep:14}") int keep) {
        this.shop = shop;
        this.folder = folder.toAbsolutePath().normalize();
        this.every = Duration.ofHours(Math.max(1, hours));
        this.keep = Math.max(1, keep);
    }

    /** How backups stand. */
    public Standing standing() {
        return standing;
    }

    /** Makes a backup where one is due. */
    @Scheduled(fixedDelay = LOOK_MILLIS, initialDelay = LOOK_MILLIS)
    void look() {
        run(Instant.now());
    }

    void run(Instant now) {
        Optional<Instant> last = Optional.empty();
        try {
            last = newest();
            if (last.isEmpty() || !last.get().plus(every).isAfter(now)) {
                Backup.Made made = shop.backup(BackupCommand.file(folder, LocalDateTime.now()), false);
                LOG.info("{}", made.words().getFirst());
                last = newest();
                thin();
            }
            standing = new Standing(last, Optional.empty());
        } catch (IOException | RuntimeException failure) {
            LOG.error("the backup into {} failed", folder, failure);
            standing = new Standing(last, Optional.of(String.valueOf(failure.getMessage())));
        }
    }

    private Optional<Instant> newest() throws IOException {
        List<Path> files = files();
        return files.isEmpty() ? Optional.empty()
                : Optional.of(Files.getLastModifiedTime(files.getLast()).toInstant());
    }

    private void thin() throws IOException {
        List<Path> files = files();
        for (Path old : files.subList(0, Math.max(0, files.size() - keep))) {
            Files.delete(old);
        }
    }

    private List<Path> files() throws IOException {
        if (!Files.isDirectory(folder)) {
            throw new IOException("the folder " + folder + " is not there");
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().matches(NAME))
                    .sorted(Comparator.comparing(file -> file.getFileName().toString())).toList();
        }
    }
}

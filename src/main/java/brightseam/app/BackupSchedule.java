package brightseam.app;

import brightseam.check.shell.Backup;
import brightseam.check.shell.BackupStanding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
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
class BackupSchedule {

    private static final Logger LOG = LoggerFactory.getLogger(BackupSchedule.class);
    private static final String NAME = "brightseam-\\d{8}-\\d{6}\\.zip";
    private static final long LOOK_MILLIS = 60_000;

    private final ControlSetup shop;
    private final Path folder;
    private final Duration every;
    private final int keep;
    private final BackupStanding standing;
    private final AtomicBoolean busy = new AtomicBoolean();

    BackupSchedule(ControlSetup shop, BackupStanding standing,
            @Value("${brightseam.backup-folder:}") Path folder,
            @Value("${brightseam.backup-hours:24}") long hours, @Value("${brightseam.backup-keep:14}") int keep) {
        this.shop = shop;
        this.standing = standing;
        this.folder = folder.toAbsolutePath().normalize();
        this.every = Duration.ofHours(Math.max(1, hours));
        this.keep = Math.max(1, keep);
    }

    /** Makes a backup where one is due, on a thread of its own: others wait for the one that calls this. */
    @Scheduled(fixedDelay = LOOK_MILLIS, initialDelay = LOOK_MILLIS)
    void look() {
        if (busy.compareAndSet(false, true)) {
            Thread.ofPlatform().name("backup").daemon().start(() -> {
                try {
                    run(Instant.now());
                } finally {
                    busy.set(false);
                }
            });
        }
    }

    /** Makes a backup where one is due at {@code now}. */
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
            standing.went(last);
        } catch (IOException | RuntimeException failure) {
            LOG.error("the backup into {} failed", folder, failure);
            standing.failed(last, String.valueOf(failure.getMessage()));
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

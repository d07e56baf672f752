package brightseam.app;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.check.shell.BackupStanding;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.mock.env.MockEnvironment;

class BackupScheduleTest {

    @TempDir
    Path data;

    @TempDir
    Path folder;

    private final BackupStanding standing = new BackupStanding();
    private HikariDataSource source;

    @BeforeEach
    void open() {
        source = ShopDatabase.pool("jdbc:h2:file:" + data.resolve("brightseam"));
        Flyway.configure().dataSource(source)
                .locations("classpath:db/migration/common", "classpath:db/migration/h2").load().migrate();
    }

    @AfterEach
    void close() {
        source.close();
    }

    @Test
    void a_backup_is_made_when_it_is_due_and_the_oldest_is_deleted() throws IOException {
        Files.writeString(folder.resolve("mine.zip"), "not ours");
        for (String old : List.of("brightseam-20200101-000000.zip", "brightseam-20200102-000000.zip")) {
            Files.writeString(folder.resolve(old), "old");
            Files.setLastModifiedTime(folder.resolve(old), FileTime.from(Instant.parse("2020-01-02T00:00:00Z")));
        }
        schedule(folder).run(Instant.now());
        List<String> after = names();
        assertThat(after).hasSize(3).contains("brightseam-20200102-000000.zip", "mine.zip");
        schedule(folder).run(Instant.now());
        assertThat(names()).isEqualTo(after);
        assertThat(standing.words()).startsWith("The newest backup was made at ");
    }

    @Test
    void a_failure_is_told_until_the_next_one_goes_well() {
        schedule(folder.resolve("unplugged")).run(Instant.now());
        assertThat(standing.words()).startsWith("THE LAST BACKUP FAILED: the folder ").contains("unplugged");
        schedule(folder).run(Instant.now().plus(Duration.ofHours(25)));
        assertThat(standing.words()).startsWith("The newest backup");
    }

    private BackupSchedule schedule(Path into) {
        MockEnvironment settings = new MockEnvironment().withProperty("brightseam.data", data.toString());
        return new BackupSchedule(new ControlSetup(source, settings), standing, into, 24, 2);
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}

package brightseam.app;

import brightseam.check.shell.Backup;
import brightseam.check.shell.ControlClient;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The command that packs a shop into one file: by its server where that runs, else by itself. */
final class BackupCommand {

    static final String COMMAND = "backup";

    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss");
    private static final String WITH_KEYS = "with-keys";
    private static final int DONE = 0;
    private static final int FAILED = 1;
    private static final int NOT_ASKED_RIGHT = 2;
    private static final String USAGE = """
            usage: backup <file.zip or folder> [--brightseam.data=<folder>] [--with-keys]
              Packs database, heads, public keys and the open files of the data folder into one file.
              --with-keys  also the secret keys, the secret that PINs are hashed with, and every other secret""";

    private BackupCommand() {}

    /** Answers 0 where the backup is whole and on disk, 1 where there is none, 2 where it was not asked right. */
    static int run(List<String> arguments, PrintStream out) {
        CommandLine line = CommandLine.of(arguments);
        if (line.unknown(Set.of(WITH_KEYS)).isPresent() || line.words().size() != 1) {
            out.println(USAGE);
            return NOT_ASKED_RIGHT;
        }
        Path data = line.data();
        if (!line.isDataThere(out)) {
            return NOT_ASKED_RIGHT;
        }
        Path target = file(Path.of(line.words().getFirst()), LocalDateTime.now());
        Optional<Integer> asked = ControlClient.ask(data, COMMAND,
                List.of(target.toString(), String.valueOf(line.has(WITH_KEYS))), out);
        try {
            return asked.isPresent() ? asked.get() : ofStopped(line, data, target, out);
        } catch (UnusableData | IOException failure) {
            out.println("No backup was made: " + failure.getMessage());
            return FAILED;
        }
    }

    /** The file that {@code given} means: itself, or a new one in it where it is a folder. */
    static Path file(Path given, LocalDateTime now) {
        Path target = given.toAbsolutePath().normalize();
        return Files.isDirectory(target) ? target.resolve("brightseam-" + STAMP.format(now) + ".zip") : target;
    }

    private static int ofStopped(CommandLine line, Path data, Path target, PrintStream out) throws IOException {
        try (DataFolder folder = DataFolder.take(data); HikariDataSource source = ShopDatabase.pool(folder.url())) {
            Backup.make(new Backup.Source(source, data, line.keys(data), Map.of(), line.has(WITH_KEYS)), target)
                    .words().forEach(out::println);
            return DONE;
        }
    }
}

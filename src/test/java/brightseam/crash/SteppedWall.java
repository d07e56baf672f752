package brightseam.crash;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/**
 * The wall clock of a server's process, stepped by hours in both directions while the steady clock goes on, through
 * the library libfaketime (Debian's package of that name), which is loaded before the program's own.
 */
final class SteppedWall {

    private static final List<Path> LIBRARIES = List.of(
            Path.of("/usr/lib/x86_64-linux-gnu/faketime/libfaketimeMT.so.1"),
            Path.of("/usr/lib/aarch64-linux-gnu/faketime/libfaketimeMT.so.1"));
    private static final int HOURS_MAX = 12;

    private final Path library;
    private final Path file;
    private final Random random;

    private SteppedWall(Path library, Path file, Random random) throws IOException {
        this.library = library;
        this.file = file;
        this.random = random;
        step();
    }

    /** One that tells the process by a file in {@code folder}; empty where the library is not on this machine. */
    static Optional<SteppedWall> of(Optional<Path> library, Path folder, Random random) throws IOException {
        Optional<Path> found = library.or(() -> LIBRARIES.stream().filter(Files::exists).findFirst());
        Files.createDirectories(folder);
        return found.isEmpty() ? Optional.empty()
                : Optional.of(new SteppedWall(found.get(), folder.resolve("wall-clock"), random));
    }

    /** Sets the wall clock to some hours before or after the machine's; a running process sees it at once. */
    long step() throws IOException {
        long hours = random.nextInt(2 * HOURS_MAX + 1) - HOURS_MAX;
        Files.writeString(file, (hours < 0 ? "" : "+") + hours + "h\n");
        return hours;
    }

    /** How a server is started under it. */
    ServerProcess.Way way() {
        return new ServerProcess.Way(Map.of(
                "LD_PRELOAD", library.toString(), "FAKETIME_TIMESTAMP_FILE", file.toString(),
                "FAKETIME_NO_CACHE", "1", "FAKETIME_DONT_FAKE_MONOTONIC", "1", "DONT_FAKE_MONOTONIC", "1"),
                List.of(), List.of());
    }
}

package brightseam.app;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;

/** Reads the machine's clocks; Linux tells its start and uptime in {@code /proc} (proc(5)), others do not. */
final class MachineClocks {

    private static final Path BOOT_ID = Path.of("/proc/sys/kernel/random/boot_id");
    private static final Path UPTIME = Path.of("/proc/uptime");

    private final String bootId = firstLine(BOOT_ID);

    /** All clocks, now. */
    TimeLine.Sample sample() {
        return new TimeLine.Sample(System.nanoTime(), Instant.now(), bootId, uptimeMillis());
    }

    private static long uptimeMillis() {
        String line = firstLine(UPTIME);
        return line.isEmpty() ? 0 : new BigDecimal(line.split(" ")[0]).movePointRight(3).longValue();
    }

    private static String firstLine(Path file) {
        try {
            return Files.isReadable(file) ? Files.readString(file).lines().findFirst().orElse("").strip() : "";
        } catch (IOException notTold) {
            return "";
        }
    }
}

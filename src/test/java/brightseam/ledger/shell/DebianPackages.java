package brightseam.ledger.shell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Installs what tests need and the machine lacks, where they run as root on Debian or Ubuntu. */
public final class DebianPackages {

    private DebianPackages() {}

    /** Whether {@code name} is installed now. */
    public static synchronized boolean install(String name) {
        boolean mayInstall = "root".equals(System.getProperty("user.name"))
                && Files.isExecutable(Path.of("/usr/bin/apt-get"));
        return mayInstall && run("apt-get", "update")
                && run("apt-get", "install", "-y", "--no-install-recommends", name);
    }

    private static boolean run(String... command) {
        ProcessBuilder process = new ProcessBuilder(command).inheritIO();
        process.environment().put("DEBIAN_FRONTEND", "noninteractive");
        try {
            return process.start().waitFor() == 0;
        } catch (IOException notThere) {
            return false;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}

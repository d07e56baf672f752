package brightseam.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.PlaywrightException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finds a Chromium and starts it: one that is there, else the distribution's where the tests run as root on Debian or
 * Ubuntu, else the browser library's own download, else a failure that says what to install. Never skips.
 */
public final class Chromium {

    private static final List<String> NAMES =
            List.of("chromium", "chromium-browser", "google-chrome-stable", "google-chrome");
    private static final List<String> PLACES = List.of("/usr/bin", "/usr/local/bin", "/snap/bin", "/opt/google/chrome",
            "/Applications/Chromium.app/Contents/MacOS", "/Applications/Google Chrome.app/Contents/MacOS");
    private static final List<String> ALWAYS =
            List.of("--no-sandbox", "--disable-gpu", "--disable-background-networking");

    private static Playwright playwright;
    private static Browser shared;

    private Chromium() {}

    /** The one browser of this test run; closed when the run ends. Open a context of your own in it. */
    public static synchronized Browser browser() {
        if (shared == null) {
            shared = launch(List.of());
        }
        return shared;
    }

    /**
     * A browser of your own, for what only a start argument can do, such as a fake camera. Close it yourself.
     *
     * @throws IllegalStateException saying what to install, where there is no browser and none could be had
     */
    public static synchronized Browser launch(List<String> arguments) {
        BrowserType.LaunchOptions options = new BrowserType.LaunchOptions()
                .setArgs(Stream.concat(ALWAYS.stream(), arguments.stream()).toList());
        Optional<Path> there = find().or(Chromium::installed);
        there.ifPresent(options::setExecutablePath);
        try {
            return driver(there.isPresent()).chromium().launch(options);
        } catch (PlaywrightException missing) {
            throw new IllegalStateException("The browser tests need Chromium and none could be started. Install it"
                    + " (Debian, Ubuntu: apt-get install chromium; Fedora: dnf install chromium) and run again.",
                    missing);
        }
    }

    private static Playwright driver(boolean haveBrowser) {
        if (playwright == null) {
            Map<String, String> environment =
                    haveBrowser ? Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1") : Map.of();
            playwright = Playwright.create(new Playwright.CreateOptions().setEnv(environment));
            Runtime.getRuntime().addShutdownHook(new Thread(playwright::close));
        }
        return playwright;
    }

    private static Optional<Path> find() {
        String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
        return Stream.concat(Stream.of(path.split(File.pathSeparator)), PLACES.stream())
                .flatMap(folder -> Stream.concat(NAMES.stream(), Stream.of("Chromium", "Google Chrome", "chrome"))
                        .map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    /** Installs the distribution's Chromium where that is allowed and possible. */
    private static Optional<Path> installed() {
        boolean mayInstall = "root".equals(System.getProperty("user.name"))
                && Files.isExecutable(Path.of("/usr/bin/apt-get"));
        boolean done = mayInstall && run("apt-get", "update")
                && run("apt-get", "install", "-y", "--no-install-recommends", "chromium");
        return done ? find() : Optional.empty();
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

package brightseam.browser;

import brightseam.app.Brightseam;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.web.server.servlet.context.ServletWebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;

/**
 * The real server in this process, on a port and a data folder of its own. Closing and opening it again keeps both, as
 * a restart does; {@link #close()} ends it for good and deletes the folder.
 */
public final class ShopServer implements AutoCloseable {

    private final Path folder;
    private final String shop;
    private final List<String> settings;
    private ConfigurableApplicationContext context;
    private int port;

    private ShopServer(String shop, List<String> settings) {
        try {
            this.folder = Files.createTempDirectory("brightseam-shop");
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        this.shop = shop;
        this.settings = settings;
        open();
    }

    /** A new demo shop, with its past. {@code settings} are arguments such as {@code --brightseam.idle-minutes=1}. */
    public static ShopServer demo(String... settings) {
        return new ShopServer("demo", List.of(settings));
    }

    /** A new shop of one's own, without anybody in it. */
    public static ShopServer empty(String... settings) {
        return new ShopServer("empty", List.of(settings));
    }

    /** Where it listens, without a slash at the end. */
    public String url() {
        return "http://localhost:" + port;
    }

    /** The address of {@code path}, which begins with a slash. */
    public String url(String path) {
        return url() + path;
    }

    /** The port. */
    public int port() {
        return port;
    }

    /** The data folder. */
    public Path folder() {
        return folder;
    }

    /** One of the server's services; ask anew after a restart. */
    public <T> T bean(Class<T> type) {
        return context.getBean(type);
    }

    /** All of the server's parts; ask anew after a restart. */
    public ConfigurableApplicationContext context() {
        return context;
    }

    /** Stops the server; its data stay. */
    public void stop() {
        context.close();
    }

    /** Starts it again on the same data and the same port. */
    public void open() {
        List<String> arguments = new ArrayList<>(List.of("--brightseam.shop=" + shop, "--brightseam.data=" + folder,
                "--server.port=" + port, "--brightseam.pin-strength=4"));
        if (settings.stream().noneMatch(setting -> setting.startsWith("--brightseam.https-port"))) {
            arguments.add("--brightseam.https-port=-1");
        }
        arguments.addAll(settings);
        context = SpringApplication.run(Brightseam.class, arguments.toArray(String[]::new));
        port = ((ServletWebServerApplicationContext) context).getWebServer().getPort();
    }

    /** Stops it and starts it again. */
    public void restart() {
        stop();
        open();
    }

    @Override
    public void close() {
        stop();
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}

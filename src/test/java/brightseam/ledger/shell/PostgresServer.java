package brightseam.ledger.shell;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

/**
 * A PostgreSQL of the tests' own, in a folder and on a port of its own; ends with the process. Where there is none it
 * installs the distribution's as root on Debian or Ubuntu, else fails and says what to install. Never skips.
 */
public final class PostgresServer implements AutoCloseable {

    private static final String SUPERUSER = "brightseam";
    private static final String TEMPLATE = "brightseam_template";
    private static final List<Path> VERSIONS = List.of(Path.of("/usr/lib/postgresql"));
    private static final List<Path> PLACES = List.of(
            Path.of("/usr/bin"), Path.of("/usr/local/bin"), Path.of("/usr/local/pgsql/bin"));
    /** Each test keeps a pool; none of them is told when its test is over, so they close when they are idle. */
    private static final int CONNECTIONS_OF_SERVER = 400;
    private static final int CONNECTIONS_OF_TEST = 6;
    private static final long IDLE_MILLIS = 10_000;
    private static final AtomicInteger NAMES = new AtomicInteger();

    private static PostgresServer shared;

    private final Path folder;
    private final Path programs;
    private final int port;
    private boolean templateMade;

    private PostgresServer(boolean durable) {
        programs = find().or(PostgresServer::installed).orElseThrow(() -> new IllegalStateException(
                "The tests need PostgreSQL 15 or newer and found none. Install it (Debian, Ubuntu: apt-get install"
                        + " postgresql; Fedora: dnf install postgresql-server) and run again."));
        try {
            folder = Files.createTempDirectory("brightseam-postgres");
            port = freePort();
            start(durable);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** The one server of this test run, which spares the disk: what it acknowledged is lost in a power cut. */
    public static synchronized PostgresServer shared() {
        if (shared == null) {
            shared = new PostgresServer(false);
            Runtime.getRuntime().addShutdownHook(new Thread(shared::close));
        }
        return shared;
    }

    /** A server as a shop runs it. Close it yourself. */
    public static PostgresServer durable() {
        return new PostgresServer(true);
    }

    /** The address of the database {@code name}. */
    public String url(String name) {
        return "jdbc:postgresql://127.0.0.1:" + port + "/" + name;
    }

    /** Who connects; without a password, from this machine alone. */
    public String user() {
        return SUPERUSER;
    }

    /** The folder of the server's own programs, such as {@code pg_dump}. */
    public Path programs() {
        return programs;
    }

    /** The port. */
    public int port() {
        return port;
    }

    /** A pool on a new database with every migration. */
    HikariDataSource fresh() {
        return pool(url(freshName()));
    }

    /** The name of a new database with every migration. */
    synchronized String freshName() {
        if (!templateMade) {
            make(TEMPLATE, "template0");
            try (HikariDataSource source = pool(url(TEMPLATE))) {
                TestDatabase.migrated(source, "postgresql");
            }
            templateMade = true;
        }
        return make("t" + NAMES.incrementAndGet(), TEMPLATE);
    }

    /** Makes the database {@code name}, without a table; answers the name. */
    public String make(String name) {
        return make(name, "template0");
    }

    /** A pool that lets go of its connections while nobody uses them. */
    static HikariDataSource pool(String url) {
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl(url);
        config.setUsername(SUPERUSER);
        config.setMaximumPoolSize(CONNECTIONS_OF_TEST);
        config.setMinimumIdle(0);
        config.setIdleTimeout(IDLE_MILLIS);
        return new HikariDataSource(config);
    }

    /** Ends it as a power cut would: nothing is written any more, and starts it again. */
    void crash() {
        run("pg_ctl", "-D", data(), "-m", "immediate", "-w", "stop");
        run("pg_ctl", "-D", data(), "-w", "-l", folder.resolve("log").toString(), "start");
    }

    @Override
    public void close() {
        run("pg_ctl", "-D", data(), "-m", "immediate", "-w", "stop");
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private void start(boolean durable) throws IOException {
        if (isRoot()) {
            shell("chown", "postgres", folder.toString());
        }
        run("initdb", "-D", data(), "-U", SUPERUSER, "--auth=trust", "-E", "UTF8", "--locale=C", "--no-sync");
        List<String> settings = new ArrayList<>(List.of("port = " + port, "listen_addresses = '127.0.0.1'",
                "unix_socket_directories = ''", "max_connections = " + CONNECTIONS_OF_SERVER));
        if (!durable) {
            settings.addAll(List.of("fsync = off", "full_page_writes = off"));
        }
        Files.writeString(folder.resolve("settings"), String.join("\n", settings) + "\n");
        shell("cp", folder.resolve("settings").toString(), data() + "/postgresql.auto.conf");
        run("pg_ctl", "-D", data(), "-w", "-l", folder.resolve("log").toString(), "start");
    }

    private String make(String name, String template) {
        try (Connection connection = DriverManager.getConnection(url("postgres"), SUPERUSER, "");
                Statement statement = connection.createStatement()) {
            statement.execute("create database " + name + " template " + template);
            return name;
        } catch (SQLException failure) {
            throw new IllegalStateException(failure);
        }
    }

    private String data() {
        return folder.resolve("data").toString();
    }

    /** PostgreSQL refuses to run as root. */
    private void run(String program, String... arguments) {
        List<String> command = new ArrayList<>();
        if (isRoot()) {
            command.addAll(List.of("runuser", "-u", "postgres", "--"));
        }
        command.add(programs.resolve(program).toString());
        command.addAll(List.of(arguments));
        shell(command.toArray(String[]::new));
    }

    private void shell(String... command) {
        Path out = folder.resolve("out");
        try {
            int status = new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true)
                    .redirectOutput(out.toFile()).start().waitFor();
            if (status != 0) {
                throw new IllegalStateException(String.join(" ", command) + ": " + Files.readString(out));
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        }
    }

    private static boolean isRoot() {
        return "root".equals(System.getProperty("user.name"));
    }

    private static Optional<Path> find() {
        String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
        Stream<Path> folders = Stream.of(path.split(java.io.File.pathSeparator)).map(Path::of);
        return Stream.of(versions(), folders, PLACES.stream()).flatMap(places -> places)
                .filter(place -> Files.isExecutable(place.resolve("initdb"))).findFirst();
    }

    /** Debian keeps every version's programs in a folder of their own; the newest first. */
    private static Stream<Path> versions() {
        return VERSIONS.stream().filter(Files::isDirectory).flatMap(place -> {
            try (Stream<Path> found = Files.list(place)) {
                return found.sorted(Comparator.reverseOrder()).toList().stream();
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }).map(version -> version.resolve("bin"));
    }

    private static Optional<Path> installed() {
        return DebianPackages.install("postgresql") ? find() : Optional.empty();
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }
}

package brightseam.crash;

import brightseam.ledger.shell.DebianPackages;
import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** The proxy of {@code docs/nginx.conf} on ports of the test's own. Installs nginx where it may, else says so. */
final class Nginx implements AutoCloseable {

    private static final long END_SECONDS = 10;

    private final Process process;
    private final int port;

    private Nginx(Process process, int port) {
        this.process = process;
        this.port = port;
    }

    /** Starts it in {@code folder}, in front of two servers by their addresses. */
    static Nginx start(Path folder, String a, String b) throws IOException {
        Path program = find().or(() -> DebianPackages.install("nginx") ? find() : Optional.empty())
                .orElseThrow(() -> new IllegalStateException("The tests need nginx and found none. Install it (Debian,"
                        + " Ubuntu: apt-get install nginx; Fedora: dnf install nginx) and run again."));
        int port = freePort();
        String settings = Files.readString(Path.of("docs", "nginx.conf"))
                .replace("127.0.0.1:8081", host(a)).replace("127.0.0.1:8082", host(b))
                .replace("listen 8080", "listen 127.0.0.1:" + port);
        Path file = Files.writeString(folder.resolve("nginx.conf"), settings);
        Process process = new ProcessBuilder(program.toString(), "-p", folder.toString(), "-c", file.toString(), "-e",
                "stderr", "-g", "daemon off; pid nginx.pid;").inheritIO().start();
        return new Nginx(process, port);
    }

    /** Where it listens, without a slash at the end. */
    String url() {
        return "http://localhost:" + port;
    }

    @Override
    public void close() {
        process.destroy();
        try {
            process.waitFor(END_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
        process.destroyForcibly();
    }

    private static String host(String url) {
        return url.replace("http://localhost", "127.0.0.1");
    }

    private static Optional<Path> find() {
        return Stream.of("/usr/sbin/nginx", "/usr/bin/nginx", "/usr/local/sbin/nginx", "/usr/local/bin/nginx",
                "/opt/homebrew/bin/nginx").map(Path::of).filter(Files::isExecutable).findFirst();
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }
}

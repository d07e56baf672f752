package brightseam.check.shell;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * Hears commands of its own machine, on a port of its own that is bound to the loopback address: no network and no
 * proxy in front of the shop's pages leads here, whatever headers say. Each request shows the token of the control
 * file.
 */
public final class ControlServer implements AutoCloseable {

    private static final int TOKEN_BYTES = 32;
    private static final int BODY_BYTES_MAX = 10_000;
    /** Ends an answer: everything before it was told, and what follows is the exit status. */
    static final String STATUS = "\u0004";

    private final Path data;
    private final String token;
    private final HttpServer server;
    private final ExecutorService threads = Executors.newVirtualThreadPerTaskExecutor();

    /** A command that the server does itself. */
    @FunctionalInterface
    public interface Action {
        /** Does it with {@code arguments}, tells on {@code out}; answers the command's exit status. */
        int run(List<String> arguments, PrintStream out) throws IOException;
    }

    /** Opens the port and writes the control file into {@code data}. */
    public ControlServer(Path data, Map<String, Action> actions) throws IOException {
        byte[] random = new byte[TOKEN_BYTES];
        new SecureRandom().nextBytes(random);
        this.data = data;
        this.token = Base64.getUrlEncoder().withoutPadding().encodeToString(random);
        this.server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.setExecutor(threads);
        new TreeMap<>(actions).forEach((word, action) ->
                server.createContext("/control/" + word, exchange -> answer(exchange, word, action)));
        server.start();
        new ControlFile(port(), token).write(data);
    }

    /** The port. */
    public int port() {
        return server.getAddress().getPort();
    }

    /** Hears no more, and takes the control file away. */
    @Override
    public void close() throws IOException {
        server.stop(0);
        threads.close();
        Files.deleteIfExists(data.resolve(ControlFile.NAME));
    }

    private void answer(HttpExchange exchange, String word, Action action) throws IOException {
        try (exchange) {
            int refused = refused(exchange, word);
            if (refused != 0) {
                exchange.sendResponseHeaders(refused, -1);
                return;
            }
            String body = new String(exchange.getRequestBody().readNBytes(BODY_BYTES_MAX), StandardCharsets.UTF_8);
            exchange.sendResponseHeaders(200, 0);
            try (OutputStream stream = exchange.getResponseBody()) {
                PrintStream out = new PrintStream(stream, true, StandardCharsets.UTF_8);
                out.print(STATUS + run(action, body.lines().toList(), out));
                out.flush();
            }
        }
    }

    private static int run(Action action, List<String> arguments, PrintStream out) {
        try {
            return action.run(arguments, out);
        } catch (IOException | RuntimeException failure) {
            out.println("Not done: " + failure.getMessage());
            return 1;
        }
    }

    /** The status of the refusal; 0 where it is heard. The caller is whom the socket says, never a header. */
    private int refused(HttpExchange exchange, String word) {
        if (!exchange.getRemoteAddress().getAddress().isLoopbackAddress()
                || !exchange.getLocalAddress().getAddress().isLoopbackAddress()) {
            return 403;
        }
        if (!exchange.getRequestURI().getPath().equals("/control/" + word)) {
            return 404;
        }
        if (!exchange.getRequestMethod().equals("POST")) {
            return 405;
        }
        String shown = String.valueOf(exchange.getRequestHeaders().getFirst("Authorization"));
        return MessageDigest.isEqual(shown.getBytes(StandardCharsets.UTF_8),
                ("Bearer " + token).getBytes(StandardCharsets.UTF_8)) ? 0 : 401;
    }
}

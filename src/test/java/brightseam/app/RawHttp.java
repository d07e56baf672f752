package brightseam.app;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Bytes on a socket, as somebody sends them who keeps to no rule. */
final class RawHttp {

    private static final int PATIENCE_MILLIS = 20_000;

    private RawHttp() {}

    /** The whole answer: its first line with the number, its headers, its body. */
    record Answer(int status, List<String> headers, String body) {
        /** The value of a header; empty where it is not there. */
        String header(String name) {
            String start = name.toLowerCase(Locale.ROOT) + ":";
            return headers.stream().filter(line -> line.toLowerCase(Locale.ROOT).startsWith(start))
                    .map(line -> line.substring(start.length()).strip()).findFirst().orElse("");
        }
    }

    /** Sends {@code lines}, each with its end, and an empty line behind them. */
    static Answer send(int port, String... lines) {
        try (Socket socket = new Socket("localhost", port)) {
            socket.setSoTimeout(PATIENCE_MILLIS);
            OutputStream out = socket.getOutputStream();
            out.write((String.join("\r\n", lines) + "\r\nConnection: close\r\n\r\n")
                    .getBytes(StandardCharsets.UTF_8));
            out.flush();
            String all = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            String head = all.split("\r\n\r\n", 2)[0];
            List<String> told = Arrays.asList(head.split("\r\n"));
            return new Answer(Integer.parseInt(told.getFirst().split(" ")[1]), told.subList(1, told.size()),
                    all.substring(Math.min(all.length(), head.length() + 4)));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}

package brightseam.check.shell;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Asks the server that runs on a data folder to do a command itself. */
public final class ControlClient {

    private ControlClient() {}

    /**
     * Gives the command {@code word} to the server that runs on {@code data}, and tells what that tells.
     *
     * @return the command's exit status; empty where no server can be asked
     */
    public static Optional<Integer> ask(Path data, String word, List<String> arguments, PrintStream out) {
        Optional<ControlFile> control = ControlFile.read(data);
        if (control.isEmpty()) {
            return Optional.empty();
        }
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://"
                        + InetAddress.getLoopbackAddress().getHostAddress() + ":" + control.get().port() + "/control/"
                        + word))
                .header("Authorization", "Bearer " + control.get().token())
                .POST(HttpRequest.BodyPublishers.ofString(String.join("\n", arguments))).build();
        try (HttpClient client = HttpClient.newBuilder().proxy(HttpClient.Builder.NO_PROXY).build()) {
            HttpResponse<InputStream> answer = client.send(request, HttpResponse.BodyHandlers.ofInputStream());
            return answer.statusCode() == 200 ? Optional.of(told(answer.body(), out)) : Optional.empty();
        } catch (IOException nobodyThere) {
            return Optional.empty();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }

    private static int told(InputStream body, PrintStream out) throws IOException {
        String text = new String(body.readAllBytes(), StandardCharsets.UTF_8);
        int end = text.lastIndexOf(ControlServer.STATUS);
        out.print(end < 0 ? text : text.substring(0, end));
        if (end < 0) {
            out.println("The server ended before the command did.");
            return 1;
        }
        return Integer.parseInt(text.substring(end + 1));
    }
}

package brightseam.crash;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** One tablet: takes two lots at a time through the dry bench, and goes on after a crash where the card says. */
final class CrashTablet {

    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final int number;
    private final Acknowledged acknowledged;
    private final HttpClient http;
    private int bin;
    private List<String> pair = List.of();
    private volatile Optional<String> lastRefusal = Optional.empty();

    CrashTablet(int number, Acknowledged acknowledged, HttpClient http) {
        this.number = number;
        this.acknowledged = acknowledged;
        this.http = http;
    }

    /** Works until the server does not answer, or answers that it does not store. */
    void work(String url) {
        try {
            boolean goesOn = true;
            while (goesOn) {
                goesOn = isDone(url);
            }
        } catch (IOException gone) {
            acknowledged.unanswered();
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    /** What the server said when it last refused something. */
    Optional<String> lastRefusal() {
        return lastRefusal;
    }

    /** Posts without a body; throws where no whole answer comes. */
    static HttpResponse<String> post(HttpClient http, String url) throws IOException, InterruptedException {
        return http.send(HttpRequest.newBuilder(URI.create(url)).timeout(PATIENCE)
                .POST(HttpRequest.BodyPublishers.noBody()).build(), HttpResponse.BodyHandlers.ofString());
    }

    private boolean isDone(String url) throws IOException, InterruptedException {
        boolean releases = pair.isEmpty();
        HttpResponse<String> answer = post(http, url + (releases ? "/crash/release?" : "/crash/act?tablet=" + number
                + "&pair=" + String.join(",", pair) + "&") + "bin=" + bin());
        if (answer.statusCode() != 200) {
            acknowledged.refused();
            lastRefusal = Optional.of(answer.statusCode() + " " + answer.body());
            return false;
        }
        if (answer.body().equals(CrashDesk.OVER)) {
            pair = List.of();
            bin++;
        } else {
            took(answer.body(), releases);
        }
        return true;
    }

    private void took(String body, boolean releases) {
        List<String> lines = body.lines().toList();
        if (!lines.getLast().equals(CrashDesk.STORED)) {
            throw new IllegalStateException("half an answer: " + body);
        }
        List<String> entries = lines.subList(0, lines.size() - 1);
        acknowledged.add(entries);
        if (releases) {
            pair = entries.stream().map(line -> line.substring("traveller/".length(), line.indexOf(' '))).toList();
        }
    }

    private String bin() {
        return "B-7%03d%03d".formatted(number, bin);
    }
}

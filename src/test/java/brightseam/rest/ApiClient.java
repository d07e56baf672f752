package brightseam.rest;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A shop system that asks over plain HTTP. */
final class ApiClient {

    private static final JsonMapper MAPPER = new JsonMapper();

    private final HttpClient http = HttpClient.newHttpClient();
    private final String url;
    private final Optional<String> token;

    ApiClient(String url, Optional<String> token) {
        this.url = url;
        this.token = token;
    }

    /** An answer. */
    record Answer(int status, HttpResponse<byte[]> response) {

        JsonNode json() {
            return MAPPER.readTree(response.body());
        }

        String text() {
            return new String(response.body(), java.nio.charset.StandardCharsets.UTF_8);
        }

        String header(String name) {
            return response.headers().firstValue(name).orElse("");
        }
    }

    Answer get(String path, String... headers) {
        return send("GET", path, HttpRequest.BodyPublishers.noBody(), headers);
    }

    Answer release(String kit, String key, String body) {
        return send("POST", "/api/v1/kits/" + kit + "/releases", HttpRequest.BodyPublishers.ofString(body),
                "Idempotency-Key", key, "Content-Type", "application/json");
    }

    Answer send(String method, String path, HttpRequest.BodyPublisher body, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(url + path)).method(method, body);
        token.ifPresent(shown -> request.header("Authorization", "Bearer " + shown));
        if (headers.length > 0) {
            request.headers(headers);
        }
        try {
            HttpResponse<byte[]> response = http.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
            return new Answer(response.statusCode(), response);
        } catch (IOException failure) {
            throw new IllegalStateException(failure);
        } catch (InterruptedException end) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(end);
        }
    }
}

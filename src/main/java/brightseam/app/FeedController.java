package brightseam.app;

import brightseam.device.shell.FeedAnswer;
import brightseam.device.shell.HttpFeed;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;

/**
 * Takes readings that devices send. A device has no session and no cookie, so nothing can be forged in its name; it
 * shows its token with every message. The form is in {@code shared/schemas/readings.schema.json}.
 */
@RestController
class FeedController {

    private final HttpFeed feed;

    FeedController(HttpFeed feed) {
        this.feed = feed;
    }

    /**
     * 200 with how many were taken. Else a problem in the form of RFC 9457: 400 where the message is not in the form,
     * 401 without a token that is known, 403 for a meter of another device, 409 for one that is not in use, 413 where
     * it is too long, 429 after too many wrong tokens. Nothing was taken then.
     */
    @PostMapping(path = "/feeds/readings", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<Map<String, Object>> readings(HttpServletRequest request) throws IOException {
        byte[] body;
        try (InputStream in = request.getInputStream()) {
            body = request.getContentLengthLong() > HttpFeed.BYTES_MAX
                    ? new byte[HttpFeed.BYTES_MAX + 1] : in.readNBytes(HttpFeed.BYTES_MAX + 1);
        }
        if (body.length > HttpFeed.BYTES_MAX) {
            return problem(413, "Message too long",
                    List.of("A message has at most " + HttpFeed.BYTES_MAX + " bytes. Send smaller batches."), 0);
        }
        FeedAnswer answer = feed.receive(request.getRemoteAddr(),
                Optional.ofNullable(request.getHeader(HttpHeaders.AUTHORIZATION)), body);
        return answer.isTaken() ? ResponseEntity.ok(Map.of("taken", answer.taken()))
                : problem(answer.status(), answer.title(), answer.details(), answer.waitSeconds());
    }

    private static ResponseEntity<Map<String, Object>> problem(
            int status, String title, List<String> details, long waitSeconds) {
        Map<String, Object> problem = new LinkedHashMap<>();
        problem.put("title", title);
        problem.put("status", status);
        problem.put("detail", String.join(" ", details));
        ResponseEntity.BodyBuilder answer =
                ResponseEntity.status(status).contentType(MediaType.APPLICATION_PROBLEM_JSON);
        if (status == 401) {
            answer.header(HttpHeaders.WWW_AUTHENTICATE, "Bearer");
        }
        if (waitSeconds > 0) {
            answer.header(HttpHeaders.RETRY_AFTER, Long.toString(waitSeconds));
        }
        return answer.body(problem);
    }
}

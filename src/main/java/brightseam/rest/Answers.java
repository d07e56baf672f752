package brightseam.rest;

import brightseam.ledger.Chain;
import brightseam.remote.Scope;
import brightseam.remote.ShopSystem;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;

/** How answers are sent, and who may have them. */
final class Answers {

    private static final int TAG_DIGITS = 12;

    private Answers() {}

    /**
     * The system that asks, where it was given {@code scope}.
     *
     * @throws Problem.Thrown where it was not
     */
    static ShopSystem system(HttpServletRequest request, Scope scope) {
        ShopSystem system = Optional.ofNullable((ShopSystem) request.getAttribute(TokenFilter.SYSTEM))
                .orElseThrow(() -> new IllegalStateException("nobody asks"));
        if (!system.may(scope)) {
            throw new Problem.Thrown(Problem.of(403, "scope-missing", "Not allowed to this system",
                    system.id() + " was not given the scope " + scope.name().toLowerCase(java.util.Locale.ROOT) + "."));
        }
        return system;
    }

    /** {@code value} as JSON. */
    static ResponseEntity<byte[]> json(int status, Object value) {
        return ResponseEntity.status(status).contentType(MediaType.APPLICATION_JSON)
                .cacheControl(CacheControl.noStore()).body(ApiJson.write(value));
    }

    /**
     * {@code value} as JSON under a tag: the stream's version, and a part of the body's hash, because what is missing
     * also changes with time. 304 where whoever asks has the same already.
     */
    static ResponseEntity<byte[]> tagged(HttpServletRequest request, long version, Object value) {
        byte[] body = ApiJson.write(value);
        return tagged(request, "v" + version + "-" + Chain.sha256(body).substring(0, TAG_DIGITS),
                MediaType.APPLICATION_JSON, body);
    }

    /** {@code body} under {@code tag}, or 304. */
    static ResponseEntity<byte[]> tagged(HttpServletRequest request, String tag, MediaType type, byte[] body) {
        String quoted = '"' + tag + '"';
        String known = Optional.ofNullable(request.getHeader(HttpHeaders.IF_NONE_MATCH)).orElse("");
        boolean same = List.of(known.split("\\s*,\\s*")).contains(quoted);
        ResponseEntity.BodyBuilder answer = ResponseEntity.status(same ? 304 : 200).eTag(quoted)
                .cacheControl(CacheControl.noCache().cachePrivate());
        return same ? answer.build() : answer.contentType(type).body(body);
    }

    /** {@code problem}, in its form. */
    static ResponseEntity<byte[]> problem(Problem problem) {
        ResponseEntity.BodyBuilder answer = ResponseEntity.status(problem.status())
                .contentType(MediaType.APPLICATION_PROBLEM_JSON).cacheControl(CacheControl.noStore());
        headers(problem).forEach(answer::header);
        return answer.body(ApiJson.write(body(problem)));
    }

    /** As {@link #problem}, before any of the program's paths is reached. */
    static void send(HttpServletResponse response, Problem problem) throws IOException {
        response.setStatus(problem.status());
        response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
        headers(problem).forEach(response::setHeader);
        response.getOutputStream().write(ApiJson.write(body(problem)));
    }

    private static Map<String, String> headers(Problem problem) {
        Map<String, String> headers = new LinkedHashMap<>();
        if (problem.status() == 401) {
            headers.put(HttpHeaders.WWW_AUTHENTICATE, "Bearer");
        }
        if (problem.waitSeconds() > 0) {
            headers.put(HttpHeaders.RETRY_AFTER, Long.toString(problem.waitSeconds()));
        }
        return headers;
    }

    private static Map<String, Object> body(Problem problem) {
        Map<String, Object> body = new LinkedHashMap<>();
        body.put("type", "about:blank");
        body.put("title", problem.title());
        body.put("status", problem.status());
        body.put("detail", problem.detail());
        body.put("code", problem.code());
        if (!problem.refusals().isEmpty()) {
            body.put("refusals", problem.refusals());
        }
        return body;
    }
}

package brightseam.rest;

import brightseam.ledger.NotStoredException;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.http.server.PathContainer;
import org.springframework.web.HttpMediaTypeException;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/** Every answer under {@code /api} that is none of what was asked for, as a problem. */
@RestController
@RestControllerAdvice(basePackageClasses = ApiProblems.class)
class ApiProblems {

    private static final Logger LOG = LoggerFactory.getLogger(ApiProblems.class);
    private static final String ANYTHING = "/api/**";

    private final ObjectProvider<RequestMappingHandlerMapping> mappings;

    ApiProblems(ObjectProvider<RequestMappingHandlerMapping> mappings) {
        this.mappings = mappings;
    }

    /** What no other path answers: 405 where the path is there for another method, else 404. */
    @RequestMapping(ANYTHING)
    ResponseEntity<byte[]> nothing(HttpServletRequest request) {
        PathContainer path = PathContainer.parsePath(request.getRequestURI()
                .substring(request.getContextPath().length()));
        Set<String> methods = mappings.stream().flatMap(mapping -> mapping.getHandlerMethods().keySet().stream())
                .filter(info -> info.getPathPatternsCondition() != null
                        && !info.getMethodsCondition().getMethods().isEmpty())
                .filter(info -> info.getPathPatternsCondition().getPatterns().stream()
                        .anyMatch(pattern -> pattern.matches(path)))
                .flatMap(info -> info.getMethodsCondition().getMethods().stream()).map(Enum::name)
                .collect(Collectors.toCollection(TreeSet::new));
        if (methods.isEmpty()) {
            return Answers.problem(Problem.notFound("Nothing is answered at this path; see /api/v1/openapi.yaml."));
        }
        String allowed = String.join(", ", methods);
        ResponseEntity<byte[]> answer = Answers.problem(Problem.of(405, "method-not-allowed", "Not this method",
                "This path is there for " + allowed + "."));
        return ResponseEntity.status(405).headers(answer.getHeaders()).header(HttpHeaders.ALLOW, allowed)
                .body(answer.getBody());
    }

    @ExceptionHandler
    ResponseEntity<byte[]> known(Problem.Thrown thrown) {
        return Answers.problem(thrown.problem());
    }

    @ExceptionHandler
    ResponseEntity<byte[]> notStored(NotStoredException lost) {
        LOG.error("not stored: {}", lost.getMessage());
        return Answers.problem(new Problem("Not stored", 503, "The disk did not take it; nothing of it counts. Send it"
                + " again with the same key.", "not-stored", List.of(), 10));
    }

    /** A text that the shop's own types do not admit, such as a label in the path. */
    @ExceptionHandler
    ResponseEntity<byte[]> malformed(IllegalArgumentException malformed) {
        return Answers.problem(Problem.malformed(List.of(String.valueOf(malformed.getMessage()))));
    }

    @ExceptionHandler
    ResponseEntity<byte[]> media(HttpMediaTypeException wrong) {
        int status = wrong.getStatusCode().value();
        return Answers.problem(status == 406
                ? Problem.of(406, "not-acceptable", "Not in that type", "This path does not answer in that type.")
                : Problem.of(415, "unsupported-type", "Not of that type", "Send application/json."));
    }

    @ExceptionHandler
    ResponseEntity<byte[]> unforeseen(Exception failure) {
        LOG.error("a request of a shop system failed", failure);
        return Answers.problem(Problem.of(500, "failed", "It failed here",
                "Something failed on the server and is in its log. What was to be stored may or may not be: look"
                        + " before sending again, with the same key."));
    }
}

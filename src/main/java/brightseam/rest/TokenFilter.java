package brightseam.rest;

import brightseam.remote.ShopSystem;
import brightseam.remote.shell.ShopSystems;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.springframework.dao.DataAccessException;
import org.springframework.http.HttpHeaders;
import org.springframework.web.filter.OncePerRequestFilter;

/** Before anything under {@code /api} is answered: which system asks? */
final class TokenFilter extends OncePerRequestFilter {

    /** What the request carries on: the {@link ShopSystem} that asks. */
    static final String SYSTEM = ShopSystem.class.getName();
    /** The description says nothing of the shop. */
    static final String DESCRIPTION = "/api/v1/openapi.yaml";

    private static final long RETRY_SECONDS = 10;

    private final ShopSystems systems;

    TokenFilter(ShopSystems systems) {
        this.systems = systems;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return request.getRequestURI().equals(request.getContextPath() + DESCRIPTION)
                && "GET".equals(request.getMethod());
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        ShopSystems.Caller caller;
        try {
            caller = systems.caller(request.getRemoteAddr(),
                    Optional.ofNullable(request.getHeader(HttpHeaders.AUTHORIZATION)));
        } catch (DataAccessException failure) {
            Answers.send(response, new Problem("Not answered", 503, "The database does not answer. Ask again.",
                    "not-stored", List.of(), RETRY_SECONDS));
            return;
        }
        switch (caller) {
            case ShopSystems.Caller.Known known -> {
                request.setAttribute(SYSTEM, known.system());
                chain.doFilter(request, response);
            }
            case ShopSystems.Caller.Unknown unknown -> Answers.send(response, Problem.of(401, "no-token",
                    "No token that is known here",
                    "Send the header Authorization: Bearer, with the token that was shown when it was made."));
            case ShopSystems.Caller.TooOften tooOften -> Answers.send(response, new Problem("Too many wrong tokens",
                    429, "Wait " + tooOften.waitSeconds() + " s, and look at the token of the system.",
                    "too-many-tries", List.of(), tooOften.waitSeconds()));
        }
    }
}

package brightseam.app;

import brightseam.people.shell.SignIn;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import org.springframework.web.filter.OncePerRequestFilter;

/** Before anything is authorised: is whoever the session says still signed in on this tablet, or somebody again? */
final class TabletSessionFilter extends OncePerRequestFilter {

    private static final List<String> NOBODYS_PATHS =
            List.of("/VAADIN/build/", "/VAADIN/static/", "/frontend/", "/alive", "/favicon");

    /** Names the kind of a request that Vaadin answers on every path, for whoever the session says. */
    private static final String VAADIN_REQUEST = "v-r";

    private final SignIn signIn;

    TabletSessionFilter(SignIn signIn) {
        this.signIn = signIn;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return request.getParameter(VAADIN_REQUEST) == null
                && NOBODYS_PATHS.stream().anyMatch(path(request)::startsWith);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        signIn.agree(request, response, isTouch(request), isPage(request));
        chain.doFilter(request, response);
    }

    /** What a page does by itself while nobody touches it: Vaadin's heart beat, and the push connection. */
    private static boolean isTouch(HttpServletRequest request) {
        String kind = request.getParameter(VAADIN_REQUEST);
        return !"heartbeat".equals(kind) && !"push".equals(kind) && !path(request).startsWith("/VAADIN/push");
    }

    /**
     * The load of a page or a print. Nothing else begins a session: after a restart a page still open asks for its
     * pushes with the old one, and a new session made for that would replace the one of the page that loads meanwhile.
     */
    private static boolean isPage(HttpServletRequest request) {
        return "GET".equals(request.getMethod()) && request.getParameter("v-r") == null
                && !"websocket".equalsIgnoreCase(request.getHeader("Upgrade")) && !path(request).startsWith("/VAADIN/");
    }

    private static String path(HttpServletRequest request) {
        return request.getRequestURI().substring(request.getContextPath().length());
    }
}

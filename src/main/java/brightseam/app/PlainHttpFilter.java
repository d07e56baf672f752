package brightseam.app;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.List;
import java.util.Locale;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Where the server listens on HTTPS, plain HTTP from another machine leads to {@code /enrol} alone: PINs and cookies
 * are not sent where everybody on the network reads them. From this machine plain HTTP stays as it was.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE + 10)
class PlainHttpFilter extends OncePerRequestFilter {

    /** What plain HTTP from other machines is good for. */
    enum Plain {
        /** The page that enrols a tablet, and nothing else. */
        ENROL,
        /** That, and readings of devices that know no HTTPS. */
        FEEDS,
        /** Everything: behind a proxy that speaks HTTPS, or in a network that nobody else is in. */
        OPEN
    }

    private static final String ENROL = "/enrol";
    /** Other systems are told plainly: one that follows to a page would not notice what it sends in the clear. */
    private static final String API = "/api/";

    private final HttpsSetup https;
    private final Plain plain;

    PlainHttpFilter(HttpsSetup https, @Value("${brightseam.http:enrol}") String plain) {
        this.https = https;
        this.plain = parsed(plain);
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        String path = request.getRequestURI().substring(request.getContextPath().length());
        return !https.isOn() || plain == Plain.OPEN || request.isSecure() || isFromHere(request)
                || path.equals(ENROL) || path.startsWith(ENROL + "/")
                || plain == Plain.FEEDS && path.equals(Security.FEED);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        response.setHeader("Cache-Control", "no-store");
        boolean isPage = !request.getRequestURI().startsWith(request.getContextPath() + API);
        if (isPage && List.of("GET", "HEAD").contains(request.getMethod())) {
            response.setStatus(HttpServletResponse.SC_FOUND);
            response.setHeader("Location", request.getContextPath() + ENROL);
        } else {
            response.setStatus(HttpServletResponse.SC_FORBIDDEN);
            response.setContentType("text/plain;charset=UTF-8");
            response.getWriter().write("Use https. See " + request.getContextPath() + ENROL + "\n");
        }
    }

    private static boolean isFromHere(HttpServletRequest request) {
        try {
            return InetAddress.getByName(request.getRemoteAddr()).isLoopbackAddress();
        } catch (UnknownHostException noAddress) {
            return false;
        }
    }

    private static Plain parsed(String word) {
        try {
            return Plain.valueOf(word.toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException other) {
            throw new UnusableData("brightseam.http is \"" + word + "\". Write enrol, feeds or open.", other);
        }
    }
}

package brightseam.people.shell;

import brightseam.people.Signer;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.server.VaadinRequest;
import com.vaadin.flow.server.VaadinService;
import com.vaadin.flow.server.VaadinSession;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.util.List;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;
import org.springframework.security.web.csrf.HttpSessionCsrfTokenRepository;

/** Begins and ends the server's session for a person. */
final class Sessions {

    private static final HttpSessionSecurityContextRepository CONTEXTS = new HttpSessionSecurityContextRepository();
    private static final HttpSessionCsrfTokenRepository CSRF_TOKENS = new HttpSessionCsrfTokenRepository();

    private Sessions() {}

    /** A new session id, so that nobody who knew the old one gets in with it, then the person in the session. */
    static void begin(Signer signer, String tablet, HttpServletRequest request, HttpServletResponse response) {
        newSessionId(request);
        closeOtherPages();
        CSRF_TOKENS.saveToken(null, request, response);
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(UsernamePasswordAuthenticationToken.authenticated(
                new SignedInPerson(signer.badge().value(), signer.name(), tablet), null, authorities(signer)));
        CONTEXTS.saveContext(context, request, response);
        SecurityContextHolder.setContext(context);
    }

    static void end(HttpServletRequest request) {
        SecurityContextHolder.clearContext();
        HttpSession session = request.getSession(false);
        if (session != null) {
            session.invalidate();
        }
    }

    private static void newSessionId(HttpServletRequest request) {
        VaadinRequest ofView = VaadinRequest.getCurrent();
        if (ofView != null) {
            VaadinService.reinitializeSession(ofView);
        } else if (request.getSession(false) != null) {
            request.changeSessionId();
        }
    }

    /**
     * Pages that were opened before belong to whoever sat here then, and would go on with their rights. The page that
     * asks is the one to sign in on; it is left in the same request.
     */
    private static void closeOtherPages() {
        VaadinSession pages = VaadinSession.getCurrent();
        if (pages != null) {
            List.copyOf(pages.getUIs()).stream().filter(page -> page != UI.getCurrent()).forEach(UI::close);
        }
    }

    private static List<GrantedAuthority> authorities(Signer signer) {
        return signer.roles().stream()
                .<GrantedAuthority>map(role -> new SimpleGrantedAuthority("ROLE_" + role))
                .toList();
    }
}

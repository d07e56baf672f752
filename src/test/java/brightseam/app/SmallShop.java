package brightseam.app;

import brightseam.kernel.BadgeId;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Projection;
import brightseam.people.Recognition.Recognised;
import brightseam.ledger.shell.MemoryLedger;
import brightseam.people.shell.SignIn;
import brightseam.people.shell.StoppedClock;
import jakarta.servlet.http.HttpServlet;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import org.springframework.boot.autoconfigure.EnableAutoConfiguration;
import org.springframework.boot.web.servlet.ServletRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.Import;
import org.springframework.security.web.csrf.CsrfToken;

/** The real security and people's services around three bare pages, so that a test sees what a browser would. */
@EnableAutoConfiguration
@Import(Security.class)
@ComponentScan("brightseam.people.shell")
class SmallShop {

    @Bean
    Ledger ledger(List<Projection> projections) {
        return new MemoryLedger(projections.toArray(Projection[]::new));
    }

    @Bean
    ShopClock clock() {
        return new StoppedClock();
    }

    @Bean
    ServletRegistrationBean<HttpServlet> signInPage(SignIn signIn) {
        return page("/sign-in", new Page(signIn) {
            @Override
            protected void doPost(HttpServletRequest request, HttpServletResponse response) {
                var recognition = signIn.signIn(
                        new BadgeId(request.getParameter("badge")), request.getParameter("pin"), request, response);
                response.setStatus(recognition instanceof Recognised ? 200 : 403);
            }
        });
    }

    @Bean
    ServletRegistrationBean<HttpServlet> benchPage(SignIn signIn) {
        return page("/bench-page", new Page(signIn) {
            @Override
            protected void doPost(HttpServletRequest request, HttpServletResponse response) {
                signIn.signOut(request);
            }
        });
    }

    @Bean
    ServletRegistrationBean<HttpServlet> frames(SignIn signIn) {
        return page("/scan/frame", new Page(signIn) {
            @Override
            protected void doPost(HttpServletRequest request, HttpServletResponse response) {
                response.setStatus(200);
            }
        });
    }

    @Bean
    ServletRegistrationBean<HttpServlet> feed(SignIn signIn) {
        return page("/feeds/readings", new Page(signIn) {
            @Override
            protected void doPost(HttpServletRequest request, HttpServletResponse response) {
                response.setStatus(200);
            }
        });
    }

    private static ServletRegistrationBean<HttpServlet> page(String path, HttpServlet page) {
        var registration = new ServletRegistrationBean<>(page, path);
        registration.setName(path);
        return registration;
    }

    /** Answers who is signed in, and gives the token that a form needs. */
    private abstract static class Page extends HttpServlet {

        private final transient SignIn signIn;

        Page(SignIn signIn) {
            this.signIn = signIn;
        }

        @Override
        protected void doGet(HttpServletRequest request, HttpServletResponse response) throws IOException {
            CsrfToken token = (CsrfToken) request.getAttribute(CsrfToken.class.getName());
            response.setHeader("X-Form-Token", token.getToken());
            response.getWriter().write(signIn.here().map(here -> here.badge() + "@" + here.tablet()).orElse("nobody"));
        }
    }
}

package brightseam.app;

import brightseam.people.shell.SignIn;
import brightseam.people.shell.Tablets;
import com.vaadin.flow.spring.security.NavigationAccessControlConfigurer;
import com.vaadin.flow.spring.security.VaadinSecurityConfigurer;
import jakarta.servlet.http.HttpServletRequest;
import java.util.function.Supplier;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.HttpMethod;
import org.springframework.http.HttpStatus;
import org.springframework.security.authentication.AuthenticationManager;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authorization.AuthorizationDecision;
import org.springframework.security.authorization.AuthorizationResult;
import org.springframework.security.config.ObjectPostProcessor;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AuthorizeHttpRequestsConfigurer.AuthorizedUrl;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer.FrameOptionsConfig;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.intercept.RequestAuthorizationContext;
import org.springframework.security.web.authentication.LoginUrlAuthenticationEntryPoint;
import org.springframework.security.web.context.SecurityContextHolderFilter;
import org.springframework.security.web.header.HeaderWriterFilter;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;

/** Who may reach which path, and the headers that every answer carries. What a person may do is decided elsewhere. */
@Configuration(proxyBeanMethods = false)
class Security {

    private static final String SIGN_IN = "/sign-in";
    /** Devices have no session: {@link FeedController} asks each message for its token. */
    static final String FEED = "/feeds/readings";

    /**
     * Everything from this server only. Flow 25.2 starts its client engine with a script in the page and runs what the
     * server sends as newly made functions, hence the two exceptions for scripts; its components put styles into the
     * page (Vaadin documentation, "Frequently reported issues"). Camera frames and downloads are blobs.
     */
    static final String CONTENT_POLICY = String.join("; ",
            "default-src 'self'",
            "script-src 'self' 'unsafe-inline' 'unsafe-eval'",
            "style-src 'self' 'unsafe-inline'",
            "img-src 'self' data: blob:",
            "media-src 'self' blob:",
            "font-src 'self' data:",
            "connect-src 'self'",
            "worker-src 'self' blob:",
            "object-src 'none'",
            "base-uri 'self'",
            "form-action 'self'",
            "frame-ancestors 'none'");

    private static final String[] ANYBODYS_PATHS = {
        SIGN_IN, "/first-run", "/enrol", "/enrol/authority.crt",
        "/frontend/**", "/alive", "/favicon.ico", "/favicon.svg", "/error", "/actuator/health"
    };

    @Bean
    SecurityFilterChain shopSecurity(HttpSecurity http, SignIn signIn, Tablets tablets) throws Exception {
        http.authorizeHttpRequests(paths -> paths
                .requestMatchers(ANYBODYS_PATHS).permitAll()
                .requestMatchers("/actuator/**").denyAll()
                .requestMatchers(HttpMethod.POST, FEED).permitAll()
                .requestMatchers(HttpMethod.POST, "/scan/frame").access((who, where) -> knownHere(who, where, signIn)));
        http.csrf(forged -> forged.ignoringRequestMatchers(FEED));
        http.with(VaadinSecurityConfigurer.vaadin(), vaadin -> vaadin
                .anyRequest(AuthorizedUrl::authenticated)
                .addLogoutHandler((request, response, who) ->
                        signIn.here().ifPresent(here -> tablets.signOut(here.tablet()))));
        http.exceptionHandling(handling -> handling.authenticationEntryPoint(entryPoint()));
        http.addFilterAfter(new TabletSessionFilter(signIn), SecurityContextHolderFilter.class);
        http.headers(Security::headers);
        return http.build();
    }

    /** Views that need somebody send nobody to the sign-in page; there is no form that Spring itself would read. */
    @Bean
    static NavigationAccessControlConfigurer navigationAccess() {
        return new NavigationAccessControlConfigurer()
                .withAnnotatedViewAccessChecker()
                .withLoginView(SIGN_IN);
    }

    /** People sign in by badge and PIN only; without this, a user with a generated password would exist. */
    @Bean
    AuthenticationManager noOtherWayIn() {
        return attempt -> {
            throw new BadCredentialsException("badge and PIN only");
        };
    }

    private static AuthorizationResult knownHere(
            Supplier<? extends Authentication> who, RequestAuthorizationContext where, SignIn signIn) {
        return new AuthorizationDecision(
                signIn.here().isPresent() || signIn.tablet(where.getRequest()).isPresent());
    }

    private static AuthenticationEntryPoint entryPoint() {
        LoginUrlAuthenticationEntryPoint page = new LoginUrlAuthenticationEntryPoint(SIGN_IN);
        page.setFavorRelativeUris(true);
        return (request, response, why) -> {
            if (isAskedByScript(request)) {
                response.setStatus(HttpStatus.UNAUTHORIZED.value());
            } else {
                page.commence(request, response, why);
            }
        };
    }

    private static boolean isAskedByScript(HttpServletRequest request) {
        return request.getRequestURI().startsWith(request.getContextPath() + "/scan/");
    }

    /** No HSTS: it would bind a host name that the shop may also use without TLS; a TLS proxy may add it. */
    private static void headers(HeadersConfigurer<HttpSecurity> headers) {
        headers.addObjectPostProcessor(beforehand());
        headers.contentSecurityPolicy(policy -> policy.policyDirectives(CONTENT_POLICY))
                .frameOptions(FrameOptionsConfig::deny)
                .referrerPolicy(policy -> policy.policy(ReferrerPolicy.SAME_ORIGIN))
                .permissionsPolicyHeader(policy -> policy.policy(
                        "camera=(self), screen-wake-lock=(self), microphone=(), geolocation=(), payment=(), usb=()"))
                .httpStrictTransportSecurity(HeadersConfigurer.HstsConfig::disable);
    }

    /** Views are answered by an inner forward, after which headers come too late. */
    private static ObjectPostProcessor<HeaderWriterFilter> beforehand() {
        return new ObjectPostProcessor<>() {
            @Override
            public <O extends HeaderWriterFilter> O postProcess(O filter) {
                filter.setShouldWriteHeadersEagerly(true);
                return filter;
            }
        };
    }
}

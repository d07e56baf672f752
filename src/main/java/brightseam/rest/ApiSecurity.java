package brightseam.rest;

import brightseam.remote.shell.ShopSystems;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.context.SecurityContextHolderFilter;

/**
 * Who may reach {@code /api}: systems that show a token with every request. No session is made and no cookie is looked
 * at, so that nothing can be forged in somebody's name; whoever is signed in on a tablet is nobody here.
 */
@Configuration(proxyBeanMethods = false)
class ApiSecurity {

    private static final String CONTENT_POLICY = "default-src 'none'; frame-ancestors 'none'";

    @Bean
    @Order(Ordered.HIGHEST_PRECEDENCE)
    SecurityFilterChain apiPaths(HttpSecurity http, ShopSystems systems) throws Exception {
        http.securityMatcher("/api", "/api/**")
                .authorizeHttpRequests(paths -> paths.anyRequest().permitAll())
                .sessionManagement(sessions -> sessions.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .csrf(AbstractHttpConfigurer::disable)
                .requestCache(AbstractHttpConfigurer::disable)
                .logout(AbstractHttpConfigurer::disable)
                .addFilterAfter(new TokenFilter(systems), SecurityContextHolderFilter.class)
                .headers(headers -> headers
                        .contentSecurityPolicy(policy -> policy.policyDirectives(CONTENT_POLICY))
                        .httpStrictTransportSecurity(HeadersConfigurer.HstsConfig::disable));
        return http.build();
    }
}

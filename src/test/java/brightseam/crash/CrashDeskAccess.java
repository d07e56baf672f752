package brightseam.crash;

import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.web.SecurityFilterChain;

/** Lets the tablets of the crash test reach {@link CrashDesk}, which asks each for badge and PIN where it signs. */
@Configuration(proxyBeanMethods = false)
@ConditionalOnProperty("brightseam.crash-desk")
class CrashDeskAccess {

    @Bean
    @Order(Ordered.HIGHEST_PRECEDENCE)
    SecurityFilterChain crashDeskPaths(HttpSecurity http) throws Exception {
        return http.securityMatcher("/crash/**").authorizeHttpRequests(paths -> paths.anyRequest().permitAll())
                .csrf(forged -> forged.disable()).build();
    }
}

package brightseam.people.shell;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;

/** The cookie by which a tablet is known again. No script reads it and no other site sends it. */
final class TabletCookie {

    static final String NAME = "brightseam-tablet";
    /** Browsers keep a cookie for 400 days at most (RFC 6265bis, from memory). */
    private static final Duration LIFE = Duration.ofDays(400);

    private TabletCookie() {}

    static Optional<String> token(HttpServletRequest request) {
        return Stream.ofNullable(request.getCookies())
                .flatMap(Arrays::stream)
                .filter(cookie -> cookie.getName().equals(NAME))
                .map(Cookie::getValue)
                .findFirst();
    }

    static void put(HttpServletRequest request, HttpServletResponse response, String token) {
        ResponseCookie cookie = ResponseCookie.from(NAME, token)
                .httpOnly(true)
                .secure(request.isSecure())
                .sameSite("Strict")
                .path("/")
                .maxAge(LIFE)
                .build();
        response.addHeader(HttpHeaders.SET_COOKIE, cookie.toString());
    }
}

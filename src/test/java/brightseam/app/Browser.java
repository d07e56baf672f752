package brightseam.app;

import java.io.IOException;
import java.net.CookieManager;
import java.net.HttpCookie;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.List;

/** Plain HTTP with a jar of cookies; follows no redirect. */
final class Browser {

    private final String origin;
    private final CookieManager cookies = new CookieManager();
    private final HttpClient client = HttpClient.newBuilder().cookieHandler(cookies).build();

    Browser(int port) {
        this.origin = "http://localhost:" + port;
    }

    HttpResponse<String> get(String path) {
        return send(HttpRequest.newBuilder(URI.create(origin + path)).header("Accept", "text/html, */*").build());
    }

    /** Posts a form, without the token that protects against forged requests. */
    HttpResponse<String> postWithoutToken(String path, String form) {
        return send(HttpRequest.newBuilder(URI.create(origin + path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(form))
                .build());
    }

    HttpResponse<String> post(String path, String form) {
        String token = get("/sign-in").headers().firstValue("X-Form-Token").orElseThrow();
        return postWithoutToken(path, form + "&_csrf=" + token);
    }

    HttpResponse<String> signIn(String badge, String pin) {
        return post("/sign-in", "badge=" + badge + "&pin=" + pin);
    }

    String cookie(String name) {
        return cookies.getCookieStore().getCookies().stream()
                .filter(cookie -> cookie.getName().equals(name))
                .map(HttpCookie::getValue)
                .findFirst()
                .orElse("");
    }

    /** As after a restart of the server: it knows the session no more, the tablet's cookie is still there. */
    void loseSession() {
        cookies.getCookieStore().getCookies().stream()
                .filter(cookie -> cookie.getName().equals("brightseam-session"))
                .forEach(cookie -> cookie.setValue("0123456789ABCDEF0123456789ABCDEF"));
    }

    void takeTabletCookie(String token) {
        HttpCookie cookie = new HttpCookie("brightseam-tablet", token);
        cookie.setPath("/");
        cookie.setVersion(0);
        cookies.getCookieStore().add(URI.create(origin), cookie);
    }

    void loseTabletCookie() {
        List.copyOf(cookies.getCookieStore().getCookies()).stream()
                .filter(cookie -> cookie.getName().equals("brightseam-tablet"))
                .forEach(cookie -> cookies.getCookieStore().remove(URI.create(origin), cookie));
    }

    private HttpResponse<String> send(HttpRequest request) {
        try {
            return client.send(request, BodyHandlers.ofString());
        } catch (IOException e) {
            throw new IllegalStateException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}

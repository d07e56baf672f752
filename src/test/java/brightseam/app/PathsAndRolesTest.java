package brightseam.app;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.ShopServer;
import brightseam.kernel.BadgeId;
import brightseam.kernel.Decision;
import brightseam.kernel.Origin;
import brightseam.kernel.shell.ShopClock;
import brightseam.people.PersonCommand;
import brightseam.people.Role;
import brightseam.people.shell.People;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/** Every path that is no page, asked over HTTP by nobody and by every role: what is answered is as approved. */
class PathsAndRolesTest {

    private static final Path APPROVED = Path.of("src/test/resources/approved/paths-roles.txt");

    /** Whoever asks the other systems' paths without a token is soon told to wait: no other answer than that. */
    private static final int TOO_OFTEN = 429;
    private static final int NO_TOKEN = 401;

    private static ShopServer shop;

    @BeforeAll
    static void open_it() {
        shop = ShopServer.empty("--brightseam.greeting=false");
        for (Role role : Role.values()) {
            register(badge(role), List.of(role));
        }
    }

    @AfterAll
    static void close_it() {
        shop.close();
    }

    @Test
    void every_path_answers_every_role_as_approved() throws IOException {
        List<String> lines = new ArrayList<>();
        for (String asked : paths()) {
            Map<Integer, List<String>> by = new TreeMap<>();
            by.computeIfAbsent(status(asked, ""), status -> new ArrayList<>()).add("nobody");
            for (Role role : Role.values()) {
                by.computeIfAbsent(status(asked, signedIn(badge(role))), status -> new ArrayList<>()).add(role.name());
            }
            lines.add(asked + ": " + by);
        }
        if (Boolean.getBoolean("approve")) {
            Files.write(APPROVED, lines);
        }
        assertThat(lines).isEqualTo(Files.readAllLines(APPROVED));
    }

    @Test
    void a_role_that_was_withdrawn_and_a_badge_that_was_closed_end_in_the_running_session() {
        BadgeId badge = new BadgeId("P-77");
        register(badge, List.of(Role.INSPECTOR));
        String cookie = signedIn(badge);
        String record = "GET /stamp/T-1/record.csv";
        assertThat(status(record, cookie)).isEqualTo(404);
        run(new PersonCommand.ChangeRoles(origin(), badge, List.of(Role.FABRICATOR)));
        assertThat(status(record, cookie)).isEqualTo(302);
        String again = signedIn(badge);
        assertThat(status(record, again)).isEqualTo(403);
        run(new PersonCommand.Deactivate(origin(), badge, "left"));
        assertThat(status("GET /picture/" + "0".repeat(64), again)).isEqualTo(302);
    }

    private static TreeSet<String> paths() {
        TreeSet<String> paths = new TreeSet<>();
        RequestMappingHandlerMapping mapping =
                shop.context().getBean("requestMappingHandlerMapping", RequestMappingHandlerMapping.class);
        for (RequestMappingInfo info : mapping.getHandlerMethods().keySet()) {
            for (RequestMethod method : info.getMethodsCondition().getMethods()) {
                info.getPatternValues().forEach(path -> paths.add(method + " " + path));
            }
        }
        return paths;
    }

    private static int status(String asked, String cookie) {
        String path = asked.replaceAll("\\{sha256}", "0".repeat(64)).replaceAll("\\{[^}]+}", "X-1");
        int status = RawHttp.send(shop.port(), path + " HTTP/1.1", "Host: localhost", "Content-Length: 0",
                cookie.isEmpty() ? "X-Nobody: yes" : "Cookie: brightseam-tablet=" + cookie).status();
        return status == TOO_OFTEN ? NO_TOKEN : status;
    }

    /** A tablet that {@code badge} is signed in on, by the token that its cookie holds. */
    private static String signedIn(BadgeId badge) {
        String token = "token-of-" + badge + "-" + System.nanoTime();
        shop.bean(JdbcClient.class).sql("""
                        insert into tablet (label, token_hash, badge, signed_in_millis, active_millis)
                        values (?, ?, ?, ?, ?)""")
                .params("TAB-" + System.nanoTime() % 1_000_000, hash(token), badge.value(),
                        System.currentTimeMillis(), System.currentTimeMillis())
                .update();
        return token;
    }

    private static String hash(String token) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256")
                    .digest(token.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static BadgeId badge(Role role) {
        return new BadgeId("P-" + (role.ordinal() + 1));
    }

    private static void register(BadgeId badge, List<Role> roles) {
        run(new PersonCommand.Register(origin(), badge, "Somebody", roles));
    }

    private static void run(PersonCommand command) {
        assertThat(shop.bean(People.class).run(command)).isInstanceOf(Decision.Accepted.class);
    }

    private static Origin origin() {
        return new Origin(shop.bean(ShopClock.class).now(), Origin.SHOP, "server", false);
    }
}

package brightseam.crash;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.ShopTablet;
import brightseam.demo.DemoPerson;
import brightseam.ledger.shell.PostgresServer;
import brightseam.scan.LabelKind;
import com.microsoft.playwright.Page;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;

/** Two real servers on one PostgreSQL behind the nginx of the how-to; one of them is killed under load. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class NodesIT {

    private static final int TABLETS = 9;
    private static final int SIGNATURES = 4;
    private static final int REQUESTS_OF_EACH = 4;
    private static final int ACTIONS_MAX = 20;
    private static final long SHOWN_MILLIS_MAX = 1_000;
    private static final double PATIENCE_MILLIS = 30_000;
    /** Two nodes note and read the clock by way of the database; what the two requests take adds to it. */
    private static final long CLOCKS_APART_MILLIS_MAX = 500;

    @TempDir
    static Path folder;

    private static final HttpClient HTTP = HttpClient.newHttpClient();
    private static final Acknowledged ACKNOWLEDGED = new Acknowledged();
    private static PostgresServer database;
    private static ServerProcess a;
    private static ServerProcess b;
    private static Nginx nginx;
    private static ShopTablet ilka;
    private static String lot;

    @BeforeAll
    static void open() throws Exception {
        database = PostgresServer.durable();
        database.make("shop");
        a = node("a");
        b = node("b");
        nginx = Nginx.start(folder, a.url(), b.url());
        CrashTablet.post(HTTP, a.url() + "/crash/people?tablets=" + TABLETS);
        ilka = new ShopTablet(nginx.url(), "nodes-bench")
                .signIn(DemoPerson.ILKA_FERROW.badge().value(), DemoPerson.ILKA_FERROW.pin());
    }

    @AfterAll
    static void close() throws Exception {
        for (AutoCloseable one : new AutoCloseable[] {ilka, nginx, a, b, database, HTTP}) {
            if (one != null) {
                one.close();
            }
        }
    }

    @Test
    @Order(1)
    void what_is_signed_on_one_node_shows_on_a_board_of_the_other_within_a_second() throws Exception {
        List<Long> millis = new ArrayList<>();
        try (ShopTablet board = new ShopTablet(b.url(), "nodes-board")) {
            board.signIn(DemoPerson.BRAM_ODUYA.badge().value(), DemoPerson.BRAM_ODUYA.pin()).open("/board");
            String pair = pair(CrashTablet.post(HTTP, a.url() + "/crash/release?bin=B-7900001").body());
            lot = pair.split(",")[0];
            String line = "[data-traveller='" + lot + "']";
            board.page().locator(line).waitFor();
            for (int action = 0; action < ACTIONS_MAX && millis.size() < SIGNATURES; action++) {
                boolean signs = LedgerLook.get(HTTP, a.url() + "/crash/next?lot=" + lot).equals("Sign");
                String before = board.page().locator(line).innerText();
                long began = System.currentTimeMillis();
                HttpResponse<String> done = CrashTablet.post(
                        HTTP, a.url() + "/crash/act?tablet=0&bin=B-7900001&pair=" + pair);
                assertThat(done.statusCode()).as(done.body()).isEqualTo(200);
                if (signs) {
                    millis.add(shownAt(board.page(), line, before) - began);
                }
            }
        }
        System.out.println("From the press on one node to the board on the other: " + millis + " ms");
        assertThat(millis).hasSize(SIGNATURES);
        assertThat(Collections.min(millis)).isLessThan(SHOWN_MILLIS_MAX);
    }

    @Test
    @Order(2)
    void both_nodes_say_the_same_time() throws Exception {
        long apart = elapsed(b) - elapsed(a);
        System.out.println("The clocks of two nodes, asked one after the other: " + apart + " ms apart");
        assertThat(Math.abs(apart)).isLessThan(CLOCKS_APART_MILLIS_MAX);
    }

    @Test
    @Order(3)
    void a_node_that_is_killed_loses_nothing_that_was_acknowledged_and_its_tablet_goes_on() throws Exception {
        List<CrashTablet> tablets = IntStream.range(0, TABLETS)
                .mapToObj(number -> new CrashTablet(number, ACKNOWLEDGED, HTTP)).toList();
        List<Thread> working = IntStream.range(0, TABLETS).mapToObj(number -> Thread.ofPlatform().start(() ->
                tablets.get(number).work(List.of(a.url(), b.url(), nginx.url()).get(number % 3)))).toList();
        awaitRequests(REQUESTS_OF_EACH * TABLETS, working);
        ServerProcess killed = node().equals("a") ? a : b;
        ServerProcess left = killed == a ? b : a;
        long before = elapsed(killed);
        ilka.page().evaluate("window.wasHere = true");
        killed.kill();
        ilka.page().waitForFunction("() => document.querySelector('.work-card') && !window.wasHere", null,
                new Page.WaitForFunctionOptions().setTimeout(PATIENCE_MILLIS));
        ilka.ready().scan(LabelKind.TRAVELLER, lot).page().locator(".work-card .load").waitFor();
        assertThat(node()).isEqualTo(killed == a ? "b" : "a");
        assertThat(elapsed(left)).isGreaterThanOrEqualTo(before);
        long atKill = ACKNOWLEDGED.requests();
        List<Thread> again = IntStream.range(0, TABLETS).filter(number -> !working.get(number).isAlive())
                .mapToObj(number -> Thread.ofPlatform().start(() -> tablets.get(number).work(nginx.url()))).toList();
        assertThat(again).as("tablets whose node was killed").isNotEmpty();
        awaitRequests(atKill + REQUESTS_OF_EACH * TABLETS, Stream.of(working, again).flatMap(List::stream).toList());
        left.kill();
        for (Thread thread : working) {
            thread.join();
        }
        for (Thread thread : again) {
            thread.join();
        }
        assertNothingLost(left == a ? "a" : "b");
    }

    private static void assertNothingLost(String name) throws Exception {
        try (ServerProcess back = node(name)) {
            LedgerLook look = LedgerLook.at(HTTP, back.url());
            System.out.println(ACKNOWLEDGED + "; " + look.entries() + " entries in the ledger; both nodes killed");
            assertThat(look.faults(ACKNOWLEDGED)).isEmpty();
            assertThat(LedgerLook.get(HTTP, back.url() + "/crash/differences")).isEmpty();
        }
    }

    private static void awaitRequests(long count, List<Thread> working) throws InterruptedException {
        while (ACKNOWLEDGED.requests() < count && working.stream().anyMatch(Thread::isAlive)) {
            working.getFirst().join(20);
        }
        assertThat(ACKNOWLEDGED.requests()).isGreaterThanOrEqualTo(count);
    }

    private static ServerProcess node(String name) throws Exception {
        return ServerProcess.running(folder.resolve(name), ServerProcess.Way.plain(
                "--spring.profiles.active=postgresql", "--spring.datasource.url=" + database.url("shop"),
                "--spring.datasource.username=" + database.user(), "--brightseam.node=" + name,
                "--brightseam.keys=" + folder.resolve("keys"),
                "--server.forward-headers-strategy=native"));
    }

    /** The node that Ilka's tablet is on. */
    private static String node() {
        return ilka.page().context().cookies().stream().filter(cookie -> cookie.name.equals("brightseam-session"))
                .map(cookie -> cookie.value.substring(cookie.value.indexOf('.') + 1)).findFirst().orElseThrow();
    }

    private static long shownAt(Page page, String line, String before) {
        return ((Number) page.waitForFunction("""
                ([line, before]) => document.querySelector(line)?.innerText !== before && Date.now()""",
                List.of(line, before), new Page.WaitForFunctionOptions().setTimeout(PATIENCE_MILLIS)
                        .setPollingInterval(10)).jsonValue()).longValue();
    }

    private static long elapsed(ServerProcess server) throws Exception {
        return HTTP.send(HttpRequest.newBuilder(URI.create(server.url() + "/alive")).build(),
                        HttpResponse.BodyHandlers.discarding())
                .headers().firstValueAsLong("Shop-Elapsed-Millis").orElseThrow();
    }

    private static String pair(String released) {
        return String.join(",", released.lines().filter(line -> line.startsWith("traveller/"))
                .map(line -> line.substring("traveller/".length(), line.indexOf(' '))).distinct().toList());
    }
}

package brightseam.rest;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.ShopServer;
import brightseam.demo.DemoPerson;
import brightseam.kernel.KitId;
import brightseam.kernel.Origin;
import brightseam.kernel.SystemId;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.ShopClock;
import brightseam.kit.Kit;
import brightseam.kit.shell.Kits;
import brightseam.ledger.Chain;
import brightseam.ledger.Outcome;
import brightseam.material.shell.Heats;
import brightseam.people.Person;
import brightseam.people.Signer;
import brightseam.people.shell.People;
import brightseam.procedure.shell.ProcedureLibrary;
import brightseam.remote.Scope;
import brightseam.remote.SystemCommand;
import brightseam.remote.shell.ShopSystems;
import brightseam.report.Phrases;
import brightseam.report.shell.Records;
import brightseam.rest.ApiClient.Answer;
import brightseam.traveller.shell.Travellers;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import tools.jackson.databind.JsonNode;

/** Other systems of the shop against the real server. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class RestIT {

    private static final ApiForm FORM = new ApiForm();
    private static ShopServer shop;
    private static ApiClient orders;
    private static ApiClient reader;
    private static ApiClient nobody;

    @BeforeAll
    static void open() {
        shop = ShopServer.demo();
        orders = new ApiClient(shop.url(), Optional.of(register("ORDERS-1", Scope.READ, Scope.RELEASE)));
        reader = new ApiClient(shop.url(), Optional.of(register("WALL-1", Scope.READ)));
        nobody = new ApiClient(shop.url(), Optional.empty());
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    private static String register(String name, Scope... scopes) {
        ShopSystems systems = shop.bean(ShopSystems.class);
        Signer admin = signer(DemoPerson.ODA_MARSH);
        assertThat(systems.execute(new SystemCommand.Register(new SystemId(name), "System " + name, List.of(scopes),
                List.of(scopes).contains(Scope.RELEASE) ? Optional.of(signer(DemoPerson.BRAM_ODUYA))
                        : Optional.empty(), origin(), admin))).isInstanceOf(Outcome.Done.class);
        return ((Outcome.Done<String>) systems.makeToken(new SystemId(name), origin(), admin)).result();
    }

    private static Signer signer(DemoPerson who) {
        Person person = shop.bean(People.class).find(who.badge()).orElseThrow();
        return Signer.of(person, "badge+pin");
    }

    private static Origin origin() {
        return new Origin(shop.bean(ShopClock.class).now(), DemoPerson.ODA_MARSH.badge(), "TAB-TEST", true);
    }

    private static JsonNode fits(Answer answer, int status, String schema) {
        assertThat(answer.status()).as(answer.text()).isEqualTo(status);
        assertThat(ApiForm.faults(FORM.schema(schema), answer.json())).as(answer.text()).isEmpty();
        assertThat(answer.header("Set-Cookie")).isEmpty();
        return answer.json();
    }

    private static JsonNode problem(Answer answer, int status, String code) {
        assertThat(answer.header("Content-Type")).as(answer.text()).isEqualTo("application/problem+json");
        JsonNode problem = fits(answer, status, "Problem");
        assertThat(problem.path("code").asString()).as(answer.text()).isEqualTo(code);
        assertThat(problem.path("status").intValue()).isEqualTo(status);
        return problem;
    }

    private static String line(String part, int quantity) {
        String procedure = shop.bean(ProcedureLibrary.class).current().stream()
                .filter(one -> one.ref().id().equals("TUBE")).findFirst().orElseThrow().ref().id();
        String heat = shop.bean(Heats.class).all().stream().filter(one -> !one.isOnHold())
                .filter(one -> shop.bean(ProcedureLibrary.class).current(procedure).orElseThrow().grades()
                        .contains(one.grade())).findFirst().orElseThrow().id().value();
        return """
                {"part_number": "%s", "description": "Spare leg, upper tube", "drawing_revision": "A",
                 "quantity": %d, "procedure": "%s", "heat": "%s"}""".formatted(part, quantity, procedure, heat);
    }

    private static String request(String... lines) {
        return "{\"kit_title\": \"Lander frame, ordered\", \"session_due\": \"2031-03-04T08:00:00Z\", \"lines\": ["
                + String.join(", ", lines) + "]}";
    }

    private static int count(String kit) {
        return shop.bean(Travellers.class).labelsOfKit(new KitId(kit)).size();
    }

    @Test
    @Order(1)
    void without_a_token_nothing_is_answered_but_the_description() {
        Answer described = nobody.get("/api/v1/openapi.yaml");
        assertThat(described.status()).isEqualTo(200);
        assertThat(described.text()).isEqualTo(FORM.text());
        problem(nobody.get("/api/v1/travellers"), 401, "no-token");
        assertThat(nobody.get("/api/v1/kits").header("WWW-Authenticate")).isEqualTo("Bearer");
        problem(nobody.get("/api/v1/nowhere"), 401, "no-token");
        problem(nobody.release("K-9001", "order-0001", request(line("SP-1", 1))), 401, "no-token");
        problem(nobody.get("/api/v1/travellers", "Cookie", "brightseam-session=0123456789ABCDEF"), 401, "no-token");
    }

    @Test
    @Order(2)
    void lists_come_in_pages_and_every_answer_has_the_form_that_is_described() {
        List<String> labels = new ArrayList<>();
        String after = "";
        do {
            JsonNode page = fits(reader.get("/api/v1/travellers?state=all&limit=3" + after), 200, "TravellerPage");
            page.path("travellers").forEach(one -> labels.add(one.path("id").asString()));
            after = page.has("next") ? "&after=" + page.path("next").asString() : "";
        } while (!after.isEmpty());
        assertThat(labels).hasSizeGreaterThan(6).isSorted().doesNotHaveDuplicates();
        long open = shop.bean(Travellers.class).notEnded().size();
        assertThat(fits(reader.get("/api/v1/travellers?limit=200"), 200, "TravellerPage").path("travellers").size())
                .isEqualTo((int) open).isLessThan(labels.size());
        for (String label : labels) {
            JsonNode whole = fits(reader.get("/api/v1/travellers/" + label), 200, "Traveller");
            assertThat(whole.path("summary").path("id").asString()).isEqualTo(label);
        }
        JsonNode kits = fits(reader.get("/api/v1/kits"), 200, "KitPage");
        assertThat(kits.path("kits").size()).isPositive();
        String kit = kits.path("kits").path(0).path("id").asString();
        fits(reader.get("/api/v1/kits/" + kit), 200, "Kit");
        assertThat(fits(reader.get("/api/v1/travellers?state=all&kit=" + kit), 200, "TravellerPage")
                .path("travellers").size()).isEqualTo(count(kit));
    }

    @Test
    @Order(3)
    void an_entry_hashes_to_its_hash_and_a_tag_saves_what_has_not_changed() {
        String label = shop.bean(Travellers.class).notEnded().getFirst().id().value();
        Answer entries = reader.get("/api/v1/travellers/" + label + "/entries");
        assertThat(entries.header("Content-Type")).startsWith("application/x-ndjson");
        List<String> lines = entries.text().lines().toList();
        assertThat(lines).hasSizeGreaterThan(1);
        for (String line : lines) {
            JsonNode entry = new tools.jackson.databind.json.JsonMapper().readTree(line);
            assertThat(ApiForm.faults(FORM.schema("Entry"), entry)).isEmpty();
            String hashed = line.replaceFirst(",\"hash\":\"[0-9a-f]{64}\",\"position\":\\d+", "");
            assertThat(Chain.sha256(hashed.getBytes(StandardCharsets.UTF_8)))
                    .isEqualTo(entry.path("hash").asString());
        }
        assertThat(reader.get("/api/v1/travellers/" + label + "/entries?after=1").text().lines())
                .hasSize(lines.size() - 1);
        assertThat(reader.get("/api/v1/travellers/" + label + "/entries", "If-None-Match", entries.header("ETag"))
                .status()).isEqualTo(304);
        Answer kit = reader.get("/api/v1/kits/" + shop.bean(Kits.class).open().getFirst().id());
        assertThat(kit.header("ETag")).startsWith("\"v");
        Answer pdf = reader.get("/api/v1/travellers/" + label + "/record.pdf");
        assertThat(pdf.status()).isEqualTo(200);
        assertThat(pdf.text()).startsWith("%PDF");
        JsonNode evidence = reader.get("/api/v1/travellers/" + label + "/evidence").json();
        assertThat(evidence.toString()).contains(label).contains("brightseam");
        assertThat(reader.get("/api/v1/travellers/" + label + "/evidence?form=pdf").text()).startsWith("%PDF");
        problem(reader.get("/api/v1/travellers/" + label + "/evidence?form=xml"), 400, "malformed");
    }

    @Test
    @Order(4)
    void what_is_asked_wrongly_is_a_problem() {
        problem(reader.get("/api/v1/travellers/T-999999"), 404, "not-found");
        problem(reader.get("/api/v1/travellers/t%20x"), 400, "malformed");
        problem(reader.get("/api/v1/kits/K-9999"), 404, "not-found");
        problem(reader.get("/api/v1/nowhere"), 404, "not-found");
        problem(reader.get("/api"), 404, "not-found");
        problem(reader.get("/api/v1/travellers?limit=201"), 400, "malformed");
        problem(reader.get("/api/v1/travellers?limit=1&limit=2"), 400, "malformed");
        problem(reader.get("/api/v1/travellers?stat=all"), 400, "malformed");
        problem(reader.get("/api/v1/travellers?state=some"), 400, "malformed");
        problem(reader.get("/api/v1/travellers/T-1001/entries?after=-1"), 400, "malformed");
        Answer method = reader.send("DELETE", "/api/v1/kits", HttpRequest.BodyPublishers.noBody());
        problem(method, 405, "method-not-allowed");
        assertThat(method.header("Allow")).isEqualTo("GET");
        problem(reader.release("K-9001", "order-0001", request(line("SP-1", 1))), 403, "scope-missing");
    }

    @Test
    @Order(5)
    void a_release_that_is_not_in_its_form_takes_nothing() {
        long before = shop.bean(Travellers.class).notEnded().size();
        String good = request(line("SP-1", 1));
        problem(orders.release("K-9001", "short", good), 400, "key-missing");
        problem(orders.release("k 1".replace(" ", "%20"), "order-0002", good), 400, "malformed");
        for (String bad : List.of("", "{", "[]", "null", good + "{}", "[".repeat(5_000), "{\"a\":".repeat(2_000),
                good.replace("\"lines\"", "\"lines\": [], \"lines\""),
                good.replace("\"quantity\": 1", "\"quantity\": 0"),
                good.replace("\"quantity\": 1", "\"quantity\": 1e400"), good.replace("SP-1", "SP-1\\u0000"),
                good.replace("2031-03-04T", "2031-13-04T"), good.replace("\"kit_title\"", "\"kit_tilte\""))) {
            problem(orders.release("K-9001", "order-0003", bad), 400, "malformed");
        }
        problem(orders.release("K-9001", "order-0003", "{\"kit_title\": \"" + "x".repeat(300_000) + "\"}"), 413,
                "too-long");
        problem(orders.send("POST", "/api/v1/kits/K-9001/releases", HttpRequest.BodyPublishers.ofString(good),
                "Idempotency-Key", "order-0003", "Content-Type", "text/plain"), 415, "unsupported-type");
        assertThat(shop.bean(Travellers.class).notEnded().size()).isEqualTo((int) before);
        assertThat(shop.bean(Kits.class).find(new KitId("K-9001"))).isEmpty();
    }

    @Test
    @Order(6)
    void rules_of_the_shop_refuse_with_their_words_and_nothing_is_taken() {
        JsonNode refused = problem(orders.release("K-9001", "order-0004", request(line("SP-1", 1), line("SP-2", 1)
                .replaceAll("\"heat\": \"[^\"]*\"", "\"heat\": \"H-NONE\""))), 409, "refused");
        assertThat(refused.path("refusals").path(0).path("code").asString()).isEqualTo("heat-not-registered");
        assertThat(refused.path("refusals").path(0).path("way_out").asString()).endsWith(".");
        assertThat(count("K-9001")).isZero();
        assertThat(shop.bean(Kits.class).find(new KitId("K-9001"))).isEmpty();
        JsonNode unknown = problem(orders.release("K-9001", "order-0004",
                request(line("SP-1", 1)).replace("\"kit_title\": \"Lander frame, ordered\", ", "")), 409, "refused");
        assertThat(unknown.path("refusals").path(0).path("code").asString()).isEqualTo("kit-not-open");
    }

    @Test
    @Order(7)
    void a_kit_is_opened_and_released_once_however_often_it_is_sent() {
        String body = request(line("SP-1", 2), line("SP-2", 3));
        JsonNode first = fits(orders.release("K-9002", "order-0005", body), 201, "Released");
        assertThat(first.path("travellers").size()).isEqualTo(2);
        assertThat(first.path("answering_badge").asString()).isEqualTo(DemoPerson.BRAM_ODUYA.badge().value());
        JsonNode again = fits(orders.release("K-9002", "order-0005", body.replace("}, {", "},   {")), 200, "Released");
        assertThat(again.path("travellers")).isEqualTo(first.path("travellers"));
        assertThat(again.path("repeated").booleanValue()).isTrue();
        problem(orders.release("K-9002", "order-0005", body.replace("SP-2", "SP-3")), 422, "key-used");
        problem(orders.release("K-9003", "order-0005", body), 422, "key-used");
        Kit kit = shop.bean(Kits.class).find(new KitId("K-9002")).orElseThrow().state();
        assertThat(kit.title()).isEqualTo("Lander frame, ordered");
        assertThat(kit.lines()).hasSize(2);
        TravellerId made = new TravellerId(first.path("travellers").path(0).asString());
        assertThat(Phrases.releasedBy(shop.bean(Records.class).document(made).orElseThrow().identity()))
                .isEqualTo("system ORDERS-1 for Bram Oduya (P-0201)");
        shop.restart();
        JsonNode later = fits(orders.release("K-9002", "order-0005", body), 200, "Released");
        assertThat(later.path("travellers")).isEqualTo(first.path("travellers"));
        assertThat(count("K-9002")).isEqualTo(2);
        JsonNode more = fits(orders.release("K-9002", "order-0006", request(line("SP-4", 1))), 201, "Released");
        assertThat(more.path("travellers").size()).isEqualTo(1);
        assertThat(shop.bean(Kits.class).find(new KitId("K-9002")).orElseThrow().state().lines()).hasSize(3);
    }

    @Test
    @Order(8)
    void of_many_that_send_one_release_at_once_one_releases() {
        String body = request(line("SP-7", 1));
        try (ExecutorService threads = Executors.newFixedThreadPool(8)) {
            List<CompletableFuture<Answer>> answers = IntStream.range(0, 8).mapToObj(number -> CompletableFuture
                    .supplyAsync(() -> orders.release("K-9004", "order-0007", body), threads)).toList();
            List<Integer> statuses = answers.stream().map(CompletableFuture::join).map(Answer::status).sorted()
                    .toList();
            assertThat(statuses).startsWith(200).endsWith(201).containsOnlyOnce(201).hasSize(8);
            assertThat(answers.stream().map(CompletableFuture::join).map(answer -> answer.json()
                    .path("travellers").toString()).distinct()).hasSize(1);
        }
        assertThat(count("K-9004")).isEqualTo(1);
    }

    @Test
    @Order(9)
    void a_withdrawn_token_and_too_many_wrong_ones_end_it() {
        assertThat(shop.bean(ShopSystems.class).execute(new SystemCommand.WithdrawToken(new SystemId("WALL-1"),
                "taken off the wall", origin(), signer(DemoPerson.ODA_MARSH)))).isInstanceOf(Outcome.Done.class);
        problem(reader.get("/api/v1/kits"), 401, "no-token");
        Answer last = IntStream.range(0, 30).mapToObj(number -> reader.get("/api/v1/kits"))
                .reduce((before, after) -> after).orElseThrow();
        problem(last, 429, "too-many-tries");
        assertThat(Integer.parseInt(last.header("Retry-After"))).isBetween(1, 60);
    }
}

package brightseam.app;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.device.Feed;
import brightseam.device.SampleMeters;
import brightseam.device.shell.HttpFeed;
import brightseam.device.shell.MeterShop;
import brightseam.device.shell.Readings;
import brightseam.ledger.shell.TestLedger;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.http.ResponseEntity;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.mock.web.MockHttpServletRequest;

class FeedControllerTest {

    private final TestLedger database = TestLedger.inMemory(MeterShop.PROJECTIONS.toArray(Function[]::new));
    private final MeterShop shop = new MeterShop(database.ledger(), database.jdbc());
    private final Readings readings = new Readings(database.ledger(), database.jdbc(),
            new JdbcTransactionManager(database.source()), shop.meters(), shop.clock());
    private final FeedController controller = new FeedController(
            new HttpFeed(shop.tokens(), shop.meters(), readings, shop.clock()));

    @AfterEach
    void close() {
        readings.close();
        database.close();
    }

    private ResponseEntity<Map<String, Object>> post(String token, byte[] body) throws IOException {
        MockHttpServletRequest request = new MockHttpServletRequest("POST", "/feeds/readings");
        request.addHeader("Authorization", "Bearer " + token);
        request.setContent(body);
        return controller.readings(request);
    }

    private ResponseEntity<Map<String, Object>> post(String token, String body) throws IOException {
        return post(token, body.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void a_reading_with_the_right_token_is_taken() throws IOException {
        shop.oxygen(new Feed.Http());
        ResponseEntity<Map<String, Object>> answer = post(shop.token(SampleMeters.OXYGEN), "{\"value\": 12.3}");
        assertThat(answer.getStatusCode().value()).isEqualTo(200);
        assertThat(answer.getBody()).isEqualTo(Map.of("taken", 1));
        assertThat(readings.now(SampleMeters.OXYGEN).last().orElseThrow().value()).isEqualTo(12.3);
    }

    @Test
    void a_wrong_token_is_told_so_and_at_last_to_wait() throws IOException {
        ResponseEntity<Map<String, Object>> answer = post("wrong", "{\"value\": 1}");
        assertThat(answer.getStatusCode().value()).isEqualTo(401);
        assertThat(answer.getHeaders().getFirst("WWW-Authenticate")).isEqualTo("Bearer");
        assertThat(String.valueOf(answer.getHeaders().getContentType())).isEqualTo("application/problem+json");
        assertThat(answer.getBody()).containsKeys("title", "status", "detail");
        for (int i = 1; i < 20; i++) {
            post("wrong", "{\"value\": 1}");
        }
        ResponseEntity<Map<String, Object>> enough = post("wrong", "{\"value\": 1}");
        assertThat(enough.getStatusCode().value()).isEqualTo(429);
        assertThat(Long.parseLong(enough.getHeaders().getFirst("Retry-After"))).isBetween(1L, 60L);
    }

    @Test
    void a_message_that_is_too_long_is_not_read() throws IOException {
        assertThat(post("any", new byte[HttpFeed.BYTES_MAX + 1]).getStatusCode().value()).isEqualTo(413);
        assertThat(post("any", new byte[HttpFeed.BYTES_MAX]).getStatusCode().value()).isEqualTo(401);
    }

    @Test
    void what_is_wrong_is_said_in_sentences() throws IOException {
        shop.oxygen(new Feed.Http());
        ResponseEntity<Map<String, Object>> answer =
                post(shop.token(SampleMeters.OXYGEN), "{\"readings\": [{\"value\": 1}, {\"vlaue\": 2}]}");
        assertThat(answer.getStatusCode().value()).isEqualTo(400);
        assertThat(answer.getBody().get("detail")).isEqualTo(
                "readings[1]: value is missing or no number. readings[1]: vlaue is not known here.");
    }
}

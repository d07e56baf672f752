package brightseam.device.shell;

import static brightseam.device.SampleMeters.LEAD;
import static brightseam.device.SampleMeters.OXYGEN;
import static brightseam.kernel.Samples.ORIGIN;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.shell.TokenTries;
import brightseam.device.Feed;
import brightseam.device.Meter;
import brightseam.device.MeterCommand;
import brightseam.device.Quality;
import brightseam.device.Reading;
import brightseam.device.SampleMeters;
import brightseam.device.Series;
import brightseam.device.Trouble;
import brightseam.kernel.SupplyId;
import brightseam.ledger.shell.TestLedger;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.jdbc.support.JdbcTransactionManager;
import tools.jackson.databind.json.JsonMapper;

class HttpFeedTest {

    private static final SupplyId MOISTURE = new SupplyId("G-0602");

    private final TestLedger database = TestLedger.inMemory(MeterShop.PROJECTIONS.toArray(Function[]::new));
    private final MeterShop shop = new MeterShop(database.ledger(), database.jdbc());
    private final Readings readings = new Readings(database.ledger(), database.jdbc(),
            new JdbcTransactionManager(database.source()), shop.meters(), shop.clock());
    private final AtomicLong realMillis = new AtomicLong();
    private final HttpFeed feed = new HttpFeed(
            shop.tokens(), shop.meters(), readings, shop.clock(), realMillis::get);

    @AfterEach
    void close() {
        readings.close();
        database.close();
    }

    private FeedAnswer send(String token, String json) {
        return feed.receive("10.0.0.7", Optional.of("Bearer " + token), json.getBytes(StandardCharsets.UTF_8));
    }

    private Series all(SupplyId meter) {
        return readings.series(meter, 0, Long.MAX_VALUE - 1);
    }

    private long now() {
        return shop.clock().now().elapsedMillis();
    }

    private String oneMeter() {
        shop.clock().advance(Duration.ofMinutes(1));
        shop.oxygen(new Feed.Http());
        return shop.token(OXYGEN);
    }

    @Test
    void one_value_is_taken_as_of_now() {
        String token = oneMeter();
        assertThat(send(token, "{\"value\": 12.3}")).isEqualTo(FeedAnswer.taken(1));
        assertThat(all(OXYGEN).at(0)).isEqualTo(new Reading(now(), 12.3));
    }

    @Test
    void a_batch_of_several_meters_is_taken_with_the_age_of_each_reading() {
        shop.clock().advance(Duration.ofMinutes(1));
        shop.oxygen(new Feed.Http());
        Meter usual = SampleMeters.oxygen(new Feed.Http());
        shop.register(new Meter(MOISTURE, usual.station(), usual.place(), usual.quantity(), 0, 1000, 0.1,
                usual.every(), usual.responseTime(), usual.feed()));
        String token = shop.token(OXYGEN, MOISTURE);
        FeedAnswer answer = send(token, """
                {"sent_at": "2031-03-04T08:01:01Z", "readings": [
                  {"meter": "G-0601", "at": "2031-03-04T08:01:00.800Z", "value": 12.4},
                  {"meter": "G-0601", "at": "2031-03-04T08:01:00.300Z", "value": 12.3},
                  {"meter": "G-0602", "age_ms": 50, "value": 3e1}]}
                """);
        assertThat(answer).isEqualTo(FeedAnswer.taken(3));
        assertThat(all(OXYGEN)).isEqualTo(Series.of(List.of(
                new Reading(now() - 700, 12.3), new Reading(now() - 200, 12.4))));
        assertThat(all(MOISTURE).at(0)).isEqualTo(new Reading(now() - 50, 30));
        assertThat(send(token, "{\"value\": 1}").title()).isEqualTo("Which meter?");
    }

    @Test
    void a_clock_that_is_set_wrong_moves_no_reading_and_is_said() {
        String token = oneMeter();
        send(token, """
                {"sent_at": "2031-03-04T09:00:01Z", "at": "2031-03-04T09:00:00Z", "value": 12.4}
                """);
        assertThat(all(OXYGEN).at(0)).isEqualTo(new Reading(now() - 1000, 12.4, Set.of(Quality.CLOCK_OFF)));
        assertThat(readings.now(OXYGEN).troubles()).contains(Trouble.CLOCK_OFF);
    }

    @Test
    void a_batch_that_is_sent_again_is_not_taken_twice() {
        String token = oneMeter();
        String message = "{\"batch\": \"b-17\", \"readings\": [{\"value\": 1}, {\"value\": 2, \"age_ms\": 5}]}";
        assertThat(send(token, message)).isEqualTo(FeedAnswer.taken(2));
        assertThat(send(token, message)).isEqualTo(FeedAnswer.taken(2));
        assertThat(all(OXYGEN).size()).isEqualTo(2);
    }

    @Test
    void a_device_sends_for_its_own_meters_only() {
        String token = oneMeter();
        assertThat(send(token, "{\"meter\": \"G-0602\", \"value\": 1}").status()).isEqualTo(403);
        assertThat(send(token + "x", "{\"value\": 1}").status()).isEqualTo(401);
        assertThat(feed.receive("10.0.0.8", Optional.empty(), new byte[0]).status()).isEqualTo(401);
        assertThat(feed.receive("10.0.0.8", Optional.of(token), new byte[0]).status()).isEqualTo(401);
    }

    @Test
    void an_old_token_opens_nothing_once_there_is_a_new_one() {
        String old = oneMeter();
        shop.token(OXYGEN);
        assertThat(send(old, "{\"value\": 1}").status()).isEqualTo(401);
    }

    @Test
    void after_twenty_wrong_tokens_a_place_waits_a_minute_and_no_other_does() {
        String token = oneMeter();
        for (int i = 0; i < TokenTries.TRIES_MAX; i++) {
            assertThat(send("wrong", "{\"value\": 1}").status()).isEqualTo(401);
        }
        FeedAnswer answer = send(token, "{\"value\": 1}");
        assertThat(answer.status()).isEqualTo(429);
        assertThat(answer.waitSeconds()).isEqualTo(60);
        assertThat(feed.receive("10.0.0.8", Optional.of("Bearer " + token), "{\"value\": 1}".getBytes(
                StandardCharsets.UTF_8)).status()).isEqualTo(200);
        realMillis.addAndGet(TokenTries.WINDOW_MILLIS);
        assertThat(send(token, "{\"value\": 1}").status()).isEqualTo(200);
    }

    @Test
    void a_meter_out_of_use_takes_nothing() {
        String token = oneMeter();
        MeterShop.done(shop.meters().execute(new MeterCommand.TakeOutOfUse(OXYGEN, "cell spent", ORIGIN, LEAD)));
        assertThat(send(token, "{\"value\": 1}").status()).isEqualTo(409);
        assertThat(all(OXYGEN).isEmpty()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "", "[]", "3", "{", "{}", "{\"value\": \"12\"}", "{\"value\": null}", "{\"value\": 1e999}",
        "{\"value\": 1, \"vlaue\": 2}", "{\"value\": 1, \"value\": 2}", "{\"value\": 1, \"readings\": []}",
        "{\"readings\": []}", "{\"readings\": [{}]}", "{\"readings\": [7]}", "{\"readings\": {}}",
        "{\"readings\": [{\"value\": 1, \"sent_at\": \"2031-03-04T08:00:00Z\"}]}",
        "{\"value\": 1, \"meter\": \"g 1\"}", "{\"value\": 1, \"meter\": 4}", "{\"value\": 1, \"batch\": \"\"}",
        "{\"value\": 1, \"age_ms\": -1}", "{\"value\": 1, \"age_ms\": 1.5}", "{\"value\": 1, \"age_ms\": 86400001}",
        "{\"value\": 1, \"at\": \"2031-03-04T08:00:00Z\"}", "{\"value\": 1, \"sent_at\": \"yesterday\"}",
        "{\"readings\": [{\"value\": 1, \"at\": \"2031-03-04T08:00:00Z\"}]}",
        "{\"value\": 1, \"at\": \"2031-03-04T08:00:00Z\", \"sent_at\": \"2031-03-04T08:00:00Z\", \"age_ms\": 1}"})
    void what_is_not_in_the_form_is_refused_whole_with_a_sentence(String message) {
        String token = oneMeter();
        FeedAnswer answer = send(token, message);
        assertThat(answer.status()).as(message).isEqualTo(400);
        assertThat(answer.details()).isNotEmpty().allMatch(sentence -> sentence.endsWith("."));
        assertThat(all(OXYGEN).isEmpty()).isTrue();
        assertThat(isInSchema(message)).as("the schema says the same").isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "{\"value\": 12.3}", "{\"value\": -1e-3, \"meter\": \"G-0601\", \"age_ms\": 0, \"batch\": \"x\"}",
        "{\"readings\": [{\"value\": 1}, {\"value\": 2, \"age_ms\": 86400000}]}",
        "{\"sent_at\": \"2031-03-04T08:00:00.5Z\", \"readings\": [{\"value\": 1, \"at\": \"2031-03-04T08:00:00Z\"}]}"})
    void what_is_in_the_form_is_taken(String message) {
        String token = oneMeter();
        assertThat(send(token, message).status()).as(message).isEqualTo(200);
        assertThat(isInSchema(message)).as("the schema says the same").isTrue();
    }

    /** Numbers that overflow and doubled keys are beyond a schema; both are refused by the reader alone. */
    private static boolean isInSchema(String message) {
        try {
            var node = new JsonMapper().readTree(message);
            boolean beyond = message.contains("1e999") || message.contains("\"value\": 2}") && !message.contains("[");
            return !beyond && SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(Files.readString(Path.of("shared/schemas/readings.schema.json")))
                    .validate(node).isEmpty();
        } catch (IOException | RuntimeException noJson) {
            return false;
        }
    }
}

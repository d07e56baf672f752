package brightseam.device.shell;

import static brightseam.device.SampleMeters.OXYGEN;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.device.Feed;
import brightseam.device.Reading;
import brightseam.device.Series;
import brightseam.device.SeriesEvidence;
import brightseam.ledger.shell.TestLedger;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.support.JdbcTransactionManager;

/** The readings of two nodes on one database: one keeps them, the other hands its own over and shows what is stored. */
class ReadingsOfNodesTest {

    private static final long PATIENCE_SECONDS = 30;
    private static final double LIMIT_PPM = 20;
    private static final long GAP_MILLIS = 5_000;

    private final TestLedger database = TestLedger.inMemory(MeterShop.PROJECTIONS.toArray(Function[]::new));
    private final MeterShop shop = new MeterShop(database.ledger(), database.jdbc());
    private final AtomicBoolean firstLeads = new AtomicBoolean(true);
    private final Readings first = node(firstLeads::get);
    private final Readings second = node(() -> !firstLeads.get());

    private Readings node(BooleanSupplier leads) {
        return new Readings(database.ledger(), database.jdbc(), new JdbcTransactionManager(database.source()),
                shop.meters(), shop.clock(), leads::getAsBoolean);
    }

    @AfterEach
    void close() {
        first.close();
        second.close();
        database.close();
    }

    @Test
    void what_comes_in_on_either_node_is_shown_on_both_in_one_series() {
        shop.oxygen(new Feed.Http());
        take(first, 12);
        await(() -> all(second).size() == 1);
        take(second, 13);
        await(() -> all(first).size() == 2 && all(second).size() == 2);
        assertThat(all(second)).isEqualTo(all(first));
        assertThat(second.now(OXYGEN).last().orElseThrow().value()).isEqualTo(13);
    }

    @Test
    void evidence_that_a_node_asks_for_which_does_not_keep_the_readings_is_that_of_the_one_which_does() {
        shop.oxygen(new Feed.Http());
        long from = take(first, 12);
        take(first, 14);
        long to = take(second, 13);
        await(() -> first.reaches(OXYGEN, to));
        SeriesEvidence there = second.evidence(OXYGEN, from, to, LIMIT_PPM, GAP_MILLIS);
        assertThat(there).isEqualTo(first.evidence(OXYGEN, from, to, LIMIT_PPM, GAP_MILLIS));
        first.take(OXYGEN, List.of(new Reading(from + 1, 900)));
        assertThat(second.evidence(OXYGEN, from, to, LIMIT_PPM, GAP_MILLIS)).isEqualTo(there);
    }

    @Test
    void the_node_that_takes_the_lead_goes_on_where_the_other_stopped() {
        shop.oxygen(new Feed.Http());
        take(first, 12);
        await(() -> all(second).size() == 1);
        firstLeads.set(false);
        take(first, 13);
        await(() -> all(second).size() == 2);
        take(second, 14);
        await(() -> all(second).size() == 3 && all(first).size() == 3);
        assertThat(all(first)).isEqualTo(all(second));
    }

    private long take(Readings node, double ppm) {
        shop.clock().advance(Duration.ofSeconds(1));
        long now = shop.clock().now().elapsedMillis();
        node.take(OXYGEN, List.of(new Reading(now, ppm)));
        return now;
    }

    private static Series all(Readings node) {
        return node.series(OXYGEN, 0, Long.MAX_VALUE - 1);
    }

    private static void await(BooleanSupplier so) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (!so.getAsBoolean() && System.nanoTime() < end) {
            Thread.yield();
        }
        assertThat(so.getAsBoolean()).isTrue();
    }
}

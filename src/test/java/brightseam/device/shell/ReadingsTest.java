package brightseam.device.shell;

import static brightseam.device.SampleMeters.CHAMBER;
import static brightseam.device.SampleMeters.OXYGEN;
import static brightseam.kernel.Samples.ORIGIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.device.Downsample;
import brightseam.device.Feed;
import brightseam.device.MeterCommand;
import brightseam.device.MeterNow;
import brightseam.device.MeterPlace;
import brightseam.device.MeterQuantity;
import brightseam.device.Quality;
import brightseam.device.Reading;
import brightseam.device.SampleMeters;
import brightseam.device.Series;
import brightseam.device.SeriesBuilder;
import brightseam.device.SeriesEvidence;
import brightseam.device.Trouble;
import brightseam.kernel.BadgeId;
import brightseam.kernel.Origin;
import brightseam.ledger.Outcome;
import brightseam.ledger.shell.Subscription;
import brightseam.ledger.shell.TestLedger;
import brightseam.supply.SupplyCommand;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.support.JdbcTransactionManager;

class ReadingsTest {

    private final TestLedger database = TestLedger.inMemory(
            MeterShop.PROJECTIONS.toArray(Function[]::new));
    private final MeterShop shop = new MeterShop(database.ledger(), database.jdbc());
    private Readings readings = opened();

    private Readings opened() {
        return new Readings(database.ledger(), database.jdbc(), new JdbcTransactionManager(database.source()),
                shop.meters(), shop.clock());
    }

    @AfterEach
    void close() {
        readings.close();
        database.close();
    }

    private long now() {
        return shop.clock().now().elapsedMillis();
    }

    /** One reading after the other, 100 ms apart, each as the clock says. */
    private Series run(int count, long seed) {
        Random random = new Random(seed);
        SeriesBuilder taken = new SeriesBuilder(count);
        for (int i = 0; i < count; i++) {
            shop.clock().advance(Duration.ofMillis(95 + random.nextInt(11)));
            Reading reading = new Reading(now(), 10 + random.nextInt(200) / 10.0);
            readings.take(OXYGEN, List.of(reading));
            taken.add(reading);
        }
        return taken.build();
    }

    private Series all() {
        return readings.series(OXYGEN, 0, Long.MAX_VALUE - 1);
    }

    private long count(String table) {
        return database.jdbc().sql("select count(*) from " + table).query(Long.class).single();
    }

    @Test
    void readings_are_found_at_once_and_the_same_after_they_were_stored_and_made_blocks() {
        shop.oxygen(new Feed.Http());
        SeriesBuilder taken = new SeriesBuilder(0);
        for (int round = 0; round < 12; round++) {
            taken.add(run(271, round));
            assertThat(all()).isEqualTo(taken.build());
            readings.settle();
            assertThat(all()).isEqualTo(taken.build());
        }
        assertThat(count("series_block")).isEqualTo(3).isEqualTo(count("series_span"));
        Series middle = taken.build().between(taken.build().millis(900), taken.build().millis(2100));
        assertThat(readings.series(OXYGEN, middle.millis(0), middle.millis(middle.size() - 1))).isEqualTo(middle);
    }

    @Test
    void a_server_that_was_killed_finds_everything_that_was_stored_once() {
        shop.oxygen(new Feed.Http());
        SeriesBuilder stored = new SeriesBuilder(0);
        for (int round = 0; round < 6; round++) {
            stored.add(run(400, round));
            readings.settle();
            Readings killed = readings;
            readings = opened();
            assertThat(all()).as("round %d", round).isEqualTo(stored.build());
            assertThat(readings.now(OXYGEN).last().orElseThrow().elapsedMillis()).isEqualTo(now());
            killed.close();
        }
        assertThat(count("series_block")).isPositive();
    }

    @Test
    void a_chart_has_the_same_peaks_whether_it_is_drawn_from_readings_or_from_blocks() {
        shop.oxygen(new Feed.Simulated());
        SeriesBuilder taken = new SeriesBuilder(0);
        Random random = new Random(5);
        for (int batch = 0; batch < 40; batch++) {
            List<Reading> all = new ArrayList<>();
            for (int i = 0; i < 10_000; i++) {
                all.add(new Reading((batch * 10_000L + i) * 100, 10 + random.nextInt(900) / 10.0));
            }
            readings.take(OXYGEN, all);
            all.forEach(reading -> taken.add(reading.with(Set.of(Quality.SIMULATED))));
            readings.settle();
        }
        long end = 40_000_000;
        Series expected = Downsample.of(taken.build(), 0, end, 100);
        Series drawn = readings.chart(OXYGEN, 0, end, 100);
        for (int column = 0; column < 100; column++) {
            long from = column * end / 100;
            Series one = expected.between(from, from + end / 100 - 1);
            Series other = drawn.between(from, from + end / 100 - 1);
            assertThat(highest(other)).as("column %d", column).isEqualTo(highest(one));
            assertThat(lowest(other)).as("column %d", column).isEqualTo(lowest(one));
        }
        assertThat(readings.chart(OXYGEN, 5_000, 605_000, 100))
                .isEqualTo(Downsample.of(taken.build(), 5_000, 605_000, 100));
    }

    @Test
    void evidence_is_the_same_ever_after_because_what_comes_late_is_left_out() {
        shop.oxygen(new Feed.Http());
        Series taken = run(200, 1);
        long from = taken.millis(20);
        long to = taken.millis(180);
        SeriesEvidence before = readings.evidence(OXYGEN, from, to, 25, 500);
        assertThat(before.isProven()).isTrue();
        assertThat(before.count()).isEqualTo(161);
        readings.take(OXYGEN, List.of(new Reading(taken.millis(100) + 1, 500)));
        assertThat(readings.series(OXYGEN, from, to).size()).isEqualTo(162);
        assertThat(readings.evidence(OXYGEN, from, to, 25, 500)).isEqualTo(before);
        assertThat(readings.reaches(OXYGEN, to)).isTrue();
        assertThat(readings.reaches(OXYGEN, now() + 1)).isFalse();
    }

    @Test
    void a_calibration_that_runs_out_is_noticed_on_the_day_and_a_new_one_at_once() {
        shop.oxygen(new Feed.Http());
        run(1, 1);
        assertThat(readings.now(OXYGEN).isUsable()).isTrue();
        shop.clock().setWall(MeterShop.LAST_DAY.plusDays(1).atStartOfDay(ZoneId.systemDefault()).toInstant());
        run(1, 1);
        assertThat(readings.now(OXYGEN).troubles()).containsExactly(Trouble.UNCALIBRATED);
        assertThat(all().at(1).quality()).containsExactly(Quality.UNCALIBRATED);
        MeterShop.done(shop.supplies().execute(new SupplyCommand.Calibrate(
                OXYGEN, MeterShop.LAST_DAY.plusDays(180), "C-88", new Origin(shop.clock().now(),
                        new BadgeId("P-0101"), "desk", false))));
        await(() -> readings.now(OXYGEN).isUsable());
    }

    @Test
    void a_place_of_a_station_has_the_meter_that_is_not_in_trouble() {
        shop.oxygen(new Feed.Http());
        assertThat(readings.now(CHAMBER, MeterPlace.LOCK, MeterQuantity.OXYGEN_PPM)).isEmpty();
        assertThat(readings.now(CHAMBER, MeterPlace.CHAMBER, MeterQuantity.OXYGEN_PPM).orElseThrow().troubles())
                .containsExactly(Trouble.NEVER_HEARD);
        run(1, 1);
        MeterNow now = readings.now(CHAMBER, MeterPlace.CHAMBER, MeterQuantity.OXYGEN_PPM).orElseThrow();
        assertThat(now.isUsable()).isTrue();
        shop.clock().advance(Duration.ofMillis(700));
        assertThat(readings.now(OXYGEN).troubles()).containsExactly(Trouble.SILENT);
        assertThat(readings.now(OXYGEN).age()).isEqualTo(Duration.ofMillis(700));
        MeterShop.done(shop.meters().execute(
                new MeterCommand.TakeOutOfUse(OXYGEN, "cell spent", ORIGIN, SampleMeters.LEAD)));
        assertThat(readings.at(CHAMBER)).isEmpty();
    }

    @Test
    void a_typed_reading_is_in_the_ledger_with_who_and_in_the_series() {
        shop.oxygen(new Feed.Typed(Duration.ofMinutes(2)));
        Origin origin = new Origin(shop.clock().now(), new BadgeId("P-0007"), "bench-1", false);
        MeterShop.done(readings.type(OXYGEN, new BigDecimal("14.5"), origin));
        assertThat(all().at(0)).isEqualTo(new Reading(now(), 14.5, Set.of(Quality.TYPED)));
        assertThat(shop.meters().find(OXYGEN).orElseThrow().state().typed().orElseThrow().by())
                .isEqualTo(new BadgeId("P-0007"));
        assertThat(readings.type(OXYGEN, new BigDecimal("2000"), origin)).isInstanceOf(Outcome.Refused.class);
        assertThat(all().size()).isEqualTo(1);
        shop.clock().advance(Duration.ofSeconds(121));
        assertThat(readings.now(OXYGEN).troubles()).containsExactly(Trouble.OVERDUE);
    }

    @Test
    void who_follows_a_meter_hears_of_readings_and_of_silence() throws InterruptedException {
        shop.oxygen(new Feed.Http());
        BlockingQueue<MeterNow> heard = new ArrayBlockingQueue<>(100);
        try (Subscription following = readings.follow(OXYGEN, heard::add)) {
            run(1, 1);
            MeterNow told = heard.poll(10, TimeUnit.SECONDS);
            assertThat(told.last().orElseThrow().elapsedMillis()).isEqualTo(now());
            shop.clock().advance(Duration.ofSeconds(1));
            MeterNow silent = told;
            while (silent != null && silent.isUsable()) {
                silent = heard.poll(10, TimeUnit.SECONDS);
            }
            assertThat(silent).isNotNull();
            assertThat(silent.troubles()).containsExactly(Trouble.SILENT);
        }
        heard.clear();
        run(1, 2);
        readings.settle();
        assertThat(heard).isEmpty();
    }

    @Test
    void readings_of_what_is_no_meter_are_a_mistake() {
        assertThatThrownBy(() -> readings.take(OXYGEN, List.of(new Reading(1, 1))))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> readings.now(OXYGEN)).isInstanceOf(IllegalArgumentException.class);
    }

    private static double highest(Series series) {
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < series.size(); i++) {
            highest = Math.max(highest, series.value(i));
        }
        return highest;
    }

    private static double lowest(Series series) {
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < series.size(); i++) {
            lowest = Math.min(lowest, series.value(i));
        }
        return lowest;
    }

    private static void await(BooleanSupplier reached) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(10);
        while (!reached.getAsBoolean()) {
            assertThat(System.nanoTime()).as("reached in time").isLessThan(end);
            Thread.onSpinWait();
        }
    }
}

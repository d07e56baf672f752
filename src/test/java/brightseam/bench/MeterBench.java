package brightseam.bench;

import brightseam.device.Feed;
import brightseam.device.Meter;
import brightseam.device.MeterPlace;
import brightseam.device.MeterQuantity;
import brightseam.device.Reading;
import brightseam.device.SampleMeters;
import brightseam.device.Series;
import brightseam.device.shell.MeterShop;
import brightseam.device.shell.Readings;
import brightseam.kernel.SupplyId;
import brightseam.ledger.shell.Subscription;
import brightseam.ledger.shell.TestLedger;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Function;
import java.util.function.IntConsumer;
import org.springframework.jdbc.support.JdbcTransactionManager;

/**
 * Meters at full load in a database on disk: ten of them, ten readings a second, eight hours. How fast readings are
 * taken one by one, how many bytes each takes, how long it takes to have what a chart draws and what a stretch proves,
 * and how soon twenty who watch one meter hear of a reading. Argument: hours, else eight.
 */
public final class MeterBench {

    private static final int METERS = 10;
    private static final int STEP_MILLIS = 100;
    private static final int WATCHERS = 20;
    private static final int COLUMNS = 1000;
    private static final long JOINT_MILLIS = 120_000;
    private static final int ROUNDS = 60;
    private static final int WARM_UP = 10;
    private static final int PACE = 50;
    private static final Duration PACED = Duration.ofSeconds(20);
    private static final Duration WATCHED = Duration.ofSeconds(20);

    private final Random random = new Random(7);
    private final List<SupplyId> ids = new ArrayList<>();
    private final double[] level = new double[METERS];
    private final Path folder;
    private long now;

    private MeterBench(Path folder) {
        this.folder = folder;
    }

    /** Runs and prints. */
    public static void main(String[] args) throws Exception {
        double hours = args.length > 0 ? Double.parseDouble(args[0]) : 8;
        Path folder = Files.createTempDirectory("brightseam-bench");
        try {
            new MeterBench(folder).run((long) (hours * 36_000));
        } finally {
            LedgerBench.delete(folder);
        }
    }

    private interface Work {
        void with(MeterShop shop, Readings readings) throws Exception;
    }

    private void open(Work work) throws Exception {
        try (TestLedger database = TestLedger.inFolder(folder, MeterShop.PROJECTIONS.toArray(Function[]::new))) {
            MeterShop shop = new MeterShop(database.ledger(), database.jdbc());
            try (Readings readings = new Readings(database.ledger(), database.jdbc(),
                    new JdbcTransactionManager(database.source()), shop.meters(), shop.clock())) {
                work.with(shop, readings);
                readings.settle();
                bytes(database);
            }
        }
        System.out.printf("  database file %,d bytes%n", size());
    }

    private void run(long steps) throws Exception {
        open((shop, readings) -> {
            install(shop);
            now = shop.clock().now().elapsedMillis();
            take(shop, readings, steps);
        });
        open((shop, readings) -> {
            shop.clock().advance(Duration.ofMillis(now - shop.clock().now().elapsedMillis() + STEP_MILLIS));
            draw(readings, steps * STEP_MILLIS);
            paced(shop, readings);
            watched(shop, readings);
        });
    }

    private void install(MeterShop shop) {
        for (int i = 0; i < METERS; i++) {
            SupplyId id = new SupplyId("G-07%02d".formatted(i));
            shop.register(new Meter(id, SampleMeters.CHAMBER, MeterPlace.CHAMBER, MeterQuantity.OXYGEN_PPM, 0, 1000,
                    0.1, Duration.ofMillis(STEP_MILLIS), Duration.ofSeconds(8), new Feed.Http()));
            ids.add(id);
            level[i] = 20 + i;
        }
    }

    /** One step: the clock goes on, and every meter gives one reading that wanders and has noise. */
    private void step(MeterShop shop, Readings readings) {
        shop.clock().advance(Duration.ofMillis(STEP_MILLIS));
        now += STEP_MILLIS;
        for (int i = 0; i < METERS; i++) {
            level[i] += 0.02 * random.nextGaussian() + 0.0005 * (20 - level[i]);
            double shown = Math.round((level[i] + 0.2 * random.nextGaussian()) * 10) / 10.0;
            readings.take(ids.get(i), List.of(new Reading(now - random.nextInt(5), shown)));
        }
    }

    private void take(MeterShop shop, Readings readings, long steps) {
        long start = System.nanoTime();
        for (long i = 0; i < steps; i++) {
            step(shop, readings);
        }
        readings.settle();
        double seconds = (System.nanoTime() - start) / 1e9;
        System.out.printf("taken one by one and stored: %,d readings in %.1f s, %,.0f a second, %,.0f times real time"
                + "%n", steps * METERS, seconds, steps * METERS / seconds, steps * STEP_MILLIS / 1000.0 / seconds);
    }

    private static void bytes(TestLedger database) {
        long[] sums = database.jdbc().sql("""
                        select (select coalesce(sum(points), 0) from series_span),
                            (select coalesce(sum(octet_length(bytes)), 0) from series_block),
                            (select count(*) from series_block), (select count(*) from series_tail)
                        from (values 1)
                        """)
                .query((row, n) -> new long[] {row.getLong(1), row.getLong(2), row.getLong(3), row.getLong(4)})
                .single();
        System.out.printf("  %,d readings in %,d blocks of %.2f bytes a reading; %,d rows in the tail%n", sums[0],
                sums[2], (double) sums[1] / sums[0], sums[3]);
    }

    private void draw(Readings readings, long dayMillis) {
        long start = now - dayMillis;
        SupplyId meter = ids.getFirst();
        long apart = (dayMillis - JOINT_MILLIS) / ROUNDS;
        timed("a joint of 2 min: what is drawn", i ->
                found(readings.chart(meter, start + i * apart, start + i * apart + JOINT_MILLIS, COLUMNS)));
        timed("a joint of 2 min: what it proves, settled", i -> readings.evidence(
                ids.get(i % METERS), start + i * apart, start + i * apart + JOINT_MILLIS, 25, 500).sha256().length());
        timed("a day of one meter: what is drawn, " + COLUMNS + " columns", i ->
                found(readings.chart(ids.get(i % METERS), start, now, COLUMNS)));
        timed("a day of one meter: every reading", i -> found(readings.series(ids.get(i % METERS), start, now)));
    }

    private static void found(Series series) {
        if (series.isEmpty()) {
            throw new IllegalStateException("nothing found");
        }
    }

    private static void timed(String what, IntConsumer ask) {
        long[] nanos = new long[ROUNDS];
        for (int i = -WARM_UP; i < ROUNDS; i++) {
            long start = System.nanoTime();
            ask.accept(Math.max(0, i));
            nanos[Math.max(0, i)] = System.nanoTime() - start;
        }
        print(what, nanos);
    }

    private static void print(String what, long[] nanos) {
        Arrays.sort(nanos);
        System.out.printf("%s: median %.1f ms, p99 %.1f ms%n", what, nanos[nanos.length / 2] / 1e6,
                nanos[nanos.length * 99 / 100] / 1e6);
    }

    /** Fifty times real time for a while, evenly: how much of one core that takes, writing included. */
    private void paced(MeterShop shop, Readings readings) {
        long cpu = cpuNanos();
        long start = System.nanoTime();
        long pause = TimeUnit.MILLISECONDS.toNanos(STEP_MILLIS) / PACE;
        long steps = PACED.toNanos() / pause;
        for (long i = 0; i < steps; i++) {
            step(shop, readings);
            waitUntil(start + (i + 1) * pause);
        }
        double wall = System.nanoTime() - start;
        System.out.printf("at %d times real time for %d s: %,.0f readings a second, %.0f %% of one core%n", PACE,
                PACED.toSeconds(), steps * METERS / (wall / 1e9), (cpuNanos() - cpu) / wall * 100);
    }

    /** In real time, with twenty who watch one meter: from the call of take to each of them. */
    private void watched(MeterShop shop, Readings readings) {
        Map<Double, Long> takenAt = new ConcurrentHashMap<>();
        ConcurrentLinkedQueue<Long> waits = new ConcurrentLinkedQueue<>();
        List<Subscription> watching = new ArrayList<>();
        for (int i = 0; i < WATCHERS; i++) {
            watching.add(readings.follow(ids.getFirst(), told -> waits.add(System.nanoTime()
                    - takenAt.getOrDefault(told.last().orElseThrow().value(), System.nanoTime()))));
        }
        long cpu = cpuNanos();
        long start = System.nanoTime();
        long steps = WATCHED.toMillis() / STEP_MILLIS;
        for (int i = 1; i <= steps; i++) {
            double value = 100 + i / 10.0;
            shop.clock().advance(Duration.ofMillis(STEP_MILLIS));
            now += STEP_MILLIS;
            takenAt.put(value, System.nanoTime());
            readings.take(ids.getFirst(), List.of(new Reading(now, value)));
            waitUntil(start + TimeUnit.MILLISECONDS.toNanos((long) i * STEP_MILLIS));
        }
        double wall = System.nanoTime() - start;
        watching.forEach(Subscription::close);
        print(WATCHERS + " watch one meter, told " + waits.size() + " times of " + steps * WATCHERS,
                waits.stream().mapToLong(Long::longValue).toArray());
        System.out.printf("  %.1f %% of one core%n", (cpuNanos() - cpu) / wall * 100);
    }

    private static void waitUntil(long nanos) {
        for (long left = nanos - System.nanoTime(); left > 0; left = nanos - System.nanoTime()) {
            LockSupport.parkNanos(left);
        }
    }

    private static long cpuNanos() {
        return ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO).toNanos();
    }

    private long size() throws IOException {
        try (var files = Files.list(folder)) {
            return files.mapToLong(file -> file.toFile().length()).sum();
        }
    }
}

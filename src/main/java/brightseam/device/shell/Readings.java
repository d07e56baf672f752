package brightseam.device.shell;

import brightseam.device.Downsample;
import brightseam.device.MeterCommand;
import brightseam.device.MeterNow;
import brightseam.device.MeterPlace;
import brightseam.device.MeterQuantity;
import brightseam.device.MeterRecord;
import brightseam.device.Reading;
import brightseam.device.Series;
import brightseam.device.SeriesEvidence;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.Outcome;
import brightseam.ledger.Versioned;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Subscription;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** The readings of every meter: taken, judged, kept, shown live. Times are on the shop's elapsed time line. */
@Service
public final class Readings {

    private final Meters meters;
    private final ShopClock clock;
    private final Map<SupplyId, LiveMeter> live = new ConcurrentHashMap<>();
    private final Map<SupplyId, List<Consumer<MeterNow>>> watchers = new ConcurrentHashMap<>();

    /** Readings of {@code meters}, kept in the database of {@code jdbc}; hears of changes of meters from the ledger. */
    public Readings(Ledger ledger, JdbcClient jdbc, Meters meters, ShopClock clock) {
        this.meters = meters;
        this.clock = clock;
    }

    /**
     * Takes readings of one meter, in order of time, judges and keeps them and tells who follows the meter. They can be
     * read at once, and are on disk within a second.
     *
     * @throws IllegalArgumentException where no such meter is registered
     */
    public void take(SupplyId meter, List<Reading> readings) {
        MeterRecord record = record(meter);
        Moment now = clock.now();
        live(meter).take(record.meter(), readings, meters.isCalibrated(meter, now), now.elapsedMillis());
        watchers.getOrDefault(meter, List.of()).forEach(watcher -> watcher.accept(now(meter)));
    }

    /**
     * Writes down what somebody read off the meter now: into the ledger, with who and when, then into the series.
     *
     * @throws brightseam.ledger.NotStoredException where the disk failed; nothing was stored then
     */
    public Outcome<MeterRecord> type(SupplyId meter, BigDecimal value, Origin origin) {
        Outcome<MeterRecord> outcome = meters.commit(new MeterCommand.TypeReading(meter, value, origin));
        if (outcome instanceof Outcome.Done<MeterRecord>) {
            take(meter, List.of(new Reading(origin.at().elapsedMillis(), value.doubleValue())));
        }
        return outcome;
    }

    /**
     * How {@code meter} stands now.
     *
     * @throws IllegalArgumentException where no such meter is registered
     */
    public MeterNow now(SupplyId meter) {
        MeterRecord record = record(meter);
        Moment now = clock.now();
        var health = live(meter).health();
        Duration age = health.last().map(last -> Duration.ofMillis(now.elapsedMillis() - last.elapsedMillis()))
                .orElse(Duration.ZERO);
        return new MeterNow(record.meter(), health.last(), age,
                health.troubles(record.meter(), meters.isCalibrated(meter, now), now.elapsedMillis()),
                record.meter().isSimulated());
    }

    /** The meter for {@code quantity} at {@code place} of {@code station}; of several in use one without trouble. */
    public Optional<MeterNow> now(StationId station, MeterPlace place, MeterQuantity quantity) {
        List<MeterNow> all = at(station).stream()
                .filter(one -> one.meter().place() == place && one.meter().quantity() == quantity).toList();
        return all.stream().filter(MeterNow::isUsable).findFirst().or(() -> all.stream().findFirst());
    }

    /** Every meter in use of {@code station}, sorted by label. */
    public List<MeterNow> at(StationId station) {
        return meters.at(station).stream().map(record -> now(record.meter().id())).toList();
    }

    /** The readings of {@code meter} from {@code fromMillis} to {@code toMillis}, ends included. */
    public Series series(SupplyId meter, long fromMillis, long toMillis) {
        return live(meter).points().between(fromMillis, toMillis);
    }

    /** The same for a chart of {@code columns} columns; no peak is lost, see {@link Downsample}. */
    public Series chart(SupplyId meter, long fromMillis, long toMillis, int columns) {
        return Downsample.of(series(meter, fromMillis, toMillis), fromMillis, toMillis, columns);
    }

    /**
     * What the readings of a stretch prove; settles first, so that the same is found ever after.
     *
     * @param limit in the meter's unit; positive infinity where there is none
     * @param longestGapMillis the longest time between readings that proves something
     */
    public SeriesEvidence evidence(
            SupplyId meter, long fromMillis, long toMillis, double limit, long longestGapMillis) {
        settle();
        return SeriesEvidence.of(series(meter, fromMillis, toMillis), fromMillis, toMillis, limit, longestGapMillis);
    }

    /**
     * Brings everything taken so far into the database, and closes the past: a reading of an earlier time that comes
     * in later is kept and flagged late, and evidence leaves it out. The next append to the ledger forces it onto the
     * disk.
     */
    public void settle() {
        live.values().forEach(one -> one.settle(clock.now().elapsedMillis()));
    }

    /** Calls {@code watcher} after readings of {@code meter} were taken, on a thread of its own; latest state only. */
    public Subscription follow(SupplyId meter, Consumer<MeterNow> watcher) {
        List<Consumer<MeterNow>> mine = watchers.computeIfAbsent(meter, any -> new CopyOnWriteArrayList<>());
        mine.add(watcher);
        return () -> mine.remove(watcher);
    }

    private LiveMeter live(SupplyId meter) {
        return live.computeIfAbsent(meter, any -> new LiveMeter());
    }

    private MeterRecord record(SupplyId meter) {
        return meters.find(meter).map(Versioned::state)
                .orElseThrow(() -> new IllegalArgumentException("no meter " + meter));
    }
}

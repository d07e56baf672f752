package brightseam.device.shell;

import brightseam.device.Downsample;
import brightseam.device.MeterCommand;
import brightseam.device.MeterHealth;
import brightseam.device.MeterNow;
import brightseam.device.MeterPlace;
import brightseam.device.MeterQuantity;
import brightseam.device.MeterRecord;
import brightseam.device.Reading;
import brightseam.device.Series;
import brightseam.device.SeriesBuilder;
import brightseam.device.SeriesEvidence;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.Outcome;
import brightseam.ledger.shell.Lead;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Subscription;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;

/**
 * The readings of every meter: taken, judged, kept, shown live. Times are on the shop's elapsed time line.
 *
 * <p>Readings are found from the moment that they were taken, and are in the database within a second: a server that is
 * killed loses that second at most. What the system has not written yet is lost to a power cut besides, unless the
 * ledger stored something since; {@link #settle} is therefore called before evidence goes into the ledger.
 */
@Service
public class Readings implements AutoCloseable {

    /** More readings than this are drawn from what is known of whole blocks, where a column is as wide as one. */
    private static final long DRAWN_ONE_BY_ONE_MAX = 300_000;

    private final Meters meters;
    private final Installations installations;
    private final ShopClock clock;
    private final SeriesRows rows;
    private final SeriesNode node;
    private final SeriesWriter writer;
    private final Watchers watchers = new Watchers(this::now);

    /** As the other, for the one node of an embedded database. */
    public Readings(Ledger ledger, JdbcClient jdbc, PlatformTransactionManager transactions, Meters meters,
            ShopClock clock) {
        this(ledger, jdbc, transactions, meters, clock, () -> true);
    }

    /**
     * Readings of {@code meters}, kept in the database of {@code jdbc} by the node that leads; hears of changes of
     * meters from the ledger.
     */
    @Autowired
    public Readings(Ledger ledger, JdbcClient jdbc, PlatformTransactionManager transactions, Meters meters,
            ShopClock clock, Lead lead) {
        this.meters = meters;
        this.installations = new Installations(ledger, meters);
        this.clock = clock;
        this.rows = new SeriesRows(jdbc, transactions);
        this.node = new SeriesNode(lead, rows, new SeriesPost(jdbc), () -> clock.now().elapsedMillis());
        this.writer = new SeriesWriter(rows, node.live());
        writer.start(watchers::tellOfTime);
        node.start(this::take, writer::flush, watchers::tell);
    }

    /**
     * Takes readings of one meter, in order of time, judges and keeps them and tells who follows the meter. They can be
     * read at once, and are on disk within a second. On a node that does not keep the readings they are in the
     * database when this returns, and can be read about a second later.
     *
     * @throws IllegalArgumentException where no such meter is registered
     */
    public void take(SupplyId meter, List<Reading> readings) {
        Installations.Installed installed = installed(meter);
        if (!node.keeps()) {
            node.send(meter, readings);
            return;
        }
        Moment now = clock.now();
        live(meter).take(installed.meter(), readings, installed.isCalibrated(now), now.elapsedMillis());
        watchers.tell(meter);
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
        Installations.Installed installed = installed(meter);
        MeterHealth health = live(meter).health();
        Moment now = clock.now();
        Duration age = health.last().map(last -> Duration.ofMillis(now.elapsedMillis() - last.elapsedMillis()))
                .orElse(Duration.ZERO);
        return new MeterNow(installed.meter(), health.last(), age,
                health.troubles(installed.meter(), installed.isCalibrated(now), now.elapsedMillis()),
                installed.meter().isSimulated());
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
        LiveMeter.View view = live(meter).view();
        SeriesBuilder found = new SeriesBuilder(0);
        rows.read(meter, rows.blocks(meter, fromMillis, toMillis, view.lastBlock()),
                block -> found.add(block.between(fromMillis, toMillis)));
        return found.add(view.open().between(fromMillis, toMillis)).build();
    }

    /** The same for a chart of {@code columns} columns; no peak is lost, see {@link Downsample}. */
    public Series chart(SupplyId meter, long fromMillis, long toMillis, int columns) {
        LiveMeter.View view = live(meter).view();
        Downsample chart = new Downsample(fromMillis, toMillis, columns);
        List<SeriesRows.Block> blocks = rows.blocks(meter, fromMillis, toMillis, view.lastBlock());
        long columnMillis = (toMillis - fromMillis) / columns;
        boolean many = blocks.stream().mapToLong(block -> block.span().points()).sum() > DRAWN_ONE_BY_ONE_MAX;
        Map<Boolean, List<SeriesRows.Block>> whole = blocks.stream().collect(Collectors.partitioningBy(
                block -> many && block.span().isWithin(fromMillis, toMillis, columnMillis)));
        whole.get(true).forEach(block -> block.span().addTo(chart));
        rows.read(meter, whole.get(false), chart::add);
        chart.add(view.open());
        return chart.build();
    }

    /**
     * What the readings of a stretch prove; settles the meter up to {@code toMillis} first, so that the same is found
     * ever after. Ask {@link #reaches} before where readings may still be on their way.
     *
     * @param limit in the meter's unit; positive infinity where there is none
     * @param longestGapMillis the longest time between readings that proves something
     * @throws brightseam.ledger.NotStoredException where another node keeps the readings and does not answer
     */
    public SeriesEvidence evidence(
            SupplyId meter, long fromMillis, long toMillis, double limit, long longestGapMillis) {
        settle(meter, toMillis);
        return SeriesEvidence.of(series(meter, fromMillis, toMillis), fromMillis, toMillis, limit, longestGapMillis);
    }

    /** Whether a reading of {@code meter} has come in that was taken at {@code millis} or later. */
    public boolean reaches(SupplyId meter, long millis) {
        return live(meter).health().last().filter(last -> last.elapsedMillis() >= millis).isPresent();
    }

    /**
     * Brings everything taken so far into the database, and closes the past: a reading of an earlier time that comes
     * in later is kept and flagged late, and evidence leaves it out. The next append to the ledger forces it onto the
     * disk.
     */
    public void settle() {
        long now = clock.now().elapsedMillis();
        List.copyOf(node.live().keySet()).forEach(meter -> settle(meter, now));
    }

    private void settle(SupplyId meter, long untilMillis) {
        if (node.keeps()) {
            live(meter).settle(untilMillis);
            writer.flush();
        } else {
            node.settleThere(meter, untilMillis);
        }
    }

    /**
     * Calls {@code watcher} after readings of {@code meter} were taken and within a second after its troubles changed
     * by time alone, on a thread of its own. A watcher that is slow is told the latest state only.
     */
    public Subscription follow(SupplyId meter, Consumer<MeterNow> watcher) {
        return watchers.add(meter, watcher);
    }

    /** Stores what is left; takes no more. */
    @Override
    public void close() {
        installations.close();
        node.close();
        watchers.close();
        writer.close();
    }

    private LiveMeter live(SupplyId meter) {
        return node.live(meter);
    }

    private Installations.Installed installed(SupplyId meter) {
        return installations.find(meter).orElseThrow(() -> new IllegalArgumentException("no meter " + meter));
    }
}

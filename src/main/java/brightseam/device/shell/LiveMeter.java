package brightseam.device.shell;

import brightseam.device.Meter;
import brightseam.device.MeterHealth;
import brightseam.device.Reading;
import brightseam.device.Series;
import brightseam.device.SeriesBuilder;
import brightseam.device.SeriesSpan;
import java.util.List;
import java.util.Optional;

/** What is remembered of one meter while the server runs: its health, and readings that are in no block yet. */
final class LiveMeter {

    private final SeriesBuilder open = new SeriesBuilder(0);
    private int inTail;
    private long tails;
    private long blocks;
    private MeterHealth health = MeterHealth.unheard();
    private long settledMillis;

    /** Goes on after {@code end}; what was before {@code settledMillis} is settled. */
    LiveMeter(SeriesRows.End end, long settledMillis) {
        this.open.add(end.open());
        this.inTail = open.size();
        this.tails = end.tails();
        this.blocks = end.blocks();
        this.settledMillis = settledMillis;
        for (int i = 0; i < end.recent().size(); i++) {
            health = health.after(end.recent().at(i));
        }
    }

    /**
     * What has to be stored: a row of the tail, or blocks where there are enough readings.
     *
     * @param blocks empty where it is a row of the tail
     * @param count how many of the open readings are stored then
     */
    record Due(Series tail, List<Series> blocks, long number, long through, int count) {}

    /** What a reader looks at: readings in no block yet, and the last block that counts beside them. */
    record View(Series open, long lastBlock) {}

    synchronized MeterHealth health() {
        return health;
    }

    synchronized View view() {
        return new View(open.build(), blocks);
    }

    /** Readings that are not in the database yet. */
    synchronized Series unsaved() {
        return open.buildFrom(inTail);
    }

    /** Whether it was read from the same rows as {@code other}. */
    boolean isAs(LiveMeter other) {
        return rowNumbers().equals(other.rowNumbers());
    }

    private synchronized List<Long> rowNumbers() {
        return List.of(blocks, tails);
    }

    synchronized void take(Meter meter, List<Reading> readings, boolean calibrated, long receivedMillis) {
        for (Reading reading : readings) {
            boolean settled = reading.elapsedMillis() <= settledMillis;
            Reading judged = health.judged(meter, reading, calibrated, settled, receivedMillis);
            health = health.after(judged);
            open.add(judged);
        }
    }

    synchronized void settle(long nowMillis) {
        settledMillis = Math.max(settledMillis, nowMillis);
    }

    /** Empty where nothing came in since the last time. */
    synchronized Optional<Due> due() {
        if (open.size() == inTail) {
            return Optional.empty();
        }
        Series all = open.build();
        return Optional.of(SeriesSpan.isFull(all)
                ? new Due(Series.empty(), SeriesSpan.pieces(all), blocks + 1, tails, open.size())
                : new Due(open.buildFrom(inTail), List.of(), tails + 1, tails, open.size()));
    }

    /** {@code due} is in the database. */
    synchronized void stored(Due due) {
        if (due.blocks().isEmpty()) {
            tails++;
            inTail = due.count();
        } else {
            blocks += due.blocks().size();
            open.forget(due.count());
            inTail = 0;
        }
    }
}

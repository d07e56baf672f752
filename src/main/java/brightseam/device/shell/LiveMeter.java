package brightseam.device.shell;

import brightseam.device.Meter;
import brightseam.device.MeterHealth;
import brightseam.device.Reading;
import brightseam.device.Series;
import brightseam.device.SeriesBuilder;
import java.util.List;

/** What is remembered of one meter while the server runs. Guarded by itself. */
final class LiveMeter {

    private final SeriesBuilder points = new SeriesBuilder(0);
    private MeterHealth health = MeterHealth.unheard();
    private long settledMillis;

    synchronized MeterHealth health() {
        return health;
    }

    synchronized void take(Meter meter, List<Reading> readings, boolean calibrated, long receivedMillis) {
        for (Reading reading : readings) {
            boolean settled = reading.elapsedMillis() <= settledMillis;
            Reading judged = health.judged(meter, reading, calibrated, settled, receivedMillis);
            health = health.after(judged);
            points.add(judged);
        }
    }

    synchronized Series points() {
        return points.build();
    }

    synchronized void settle(long nowMillis) {
        settledMillis = nowMillis;
    }
}

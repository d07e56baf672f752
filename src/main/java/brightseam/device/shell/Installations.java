package brightseam.device.shell;

import brightseam.device.Meter;
import brightseam.device.MeterRecord;
import brightseam.kernel.Moment;
import brightseam.kernel.SupplyId;
import brightseam.ledger.Entry;
import brightseam.ledger.Versioned;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Subscription;
import brightseam.supply.Supply;
import brightseam.supply.shell.Supplies;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;

/** Meters with the gauges behind them, remembered until the ledger says that one of them changed. */
final class Installations implements AutoCloseable {

    private static final Set<String> FAMILIES = Set.of("meter", "supply");

    private final Meters meters;
    private final Subscription subscription;
    private final AtomicLong generation = new AtomicLong();
    private final Map<SupplyId, Installed> known = new ConcurrentHashMap<>();

    Installations(Ledger ledger, Meters meters) {
        this.meters = meters;
        this.subscription = ledger.onStored(this::hear);
    }

    /** One meter as both registers know it; {@code generation} counts the changes that were heard of before. */
    record Installed(MeterRecord record, Optional<Supply> gauge, long generation) {

        Meter meter() {
            return record.meter();
        }

        boolean isCalibrated(Moment now) {
            return gauge.filter(one -> !one.isPast(Supplies.day(now))).isPresent();
        }
    }

    /** The meter {@code id}; empty where none is registered. */
    Optional<Installed> find(SupplyId id) {
        long now = generation.get();
        Installed installed = known.get(id);
        if (installed == null || installed.generation() != now) {
            installed = meters.find(id).map(Versioned::state)
                    .map(record -> new Installed(record, meters.gauge(id), now)).orElse(null);
            if (installed != null) {
                known.put(id, installed);
            }
        }
        return Optional.ofNullable(installed);
    }

    @Override
    public void close() {
        subscription.close();
    }

    private void hear(List<Entry> entries) {
        if (entries.stream().anyMatch(entry -> FAMILIES.contains(entry.stream().family()))) {
            generation.incrementAndGet();
        }
    }
}

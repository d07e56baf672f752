package brightseam.device.shell;

import brightseam.device.Feed;
import brightseam.device.Meter;
import brightseam.device.MeterRecord;
import brightseam.device.ModbusPoint;
import brightseam.device.Reading;
import brightseam.kernel.SupplyId;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.Entry;
import brightseam.ledger.shell.Lead;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Subscription;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Service;

/** Asks every meter in use that is read over Modbus TCP, and follows the register of meters. */
@Service
public final class ModbusFeeds implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(ModbusFeeds.class);

    private final Ledger ledger;
    private final Meters meters;
    private final Readings readings;
    private final ShopClock clock;
    private final Map<Address, ModbusDevice> devices = new HashMap<>();
    private final Lead lead;
    private Optional<Subscription> subscription = Optional.empty();
    private boolean asking;

    /** As the other, for the one node of an embedded database. */
    public ModbusFeeds(Ledger ledger, Meters meters, Readings readings, ShopClock clock) {
        this(ledger, meters, readings, clock, () -> true);
    }

    /**
     * Hands what the devices of {@code meters} say to {@code readings}, on the node that leads; asks nobody before
     * {@link #start}.
     */
    @Autowired
    public ModbusFeeds(Ledger ledger, Meters meters, Readings readings, ShopClock clock, Lead lead) {
        this.lead = lead;
        this.ledger = ledger;
        this.meters = meters;
        this.readings = readings;
        this.clock = clock;
    }

    private record Address(String host, int port) {}

    /** Begins to ask. */
    @EventListener(ApplicationReadyEvent.class)
    public synchronized void start() {
        subscription = Optional.of(ledger.onStored(this::hear));
        look();
    }

    /** Begins to ask where this node leads now, and ends that where it does not. */
    @Scheduled(fixedDelay = 1000)
    synchronized void followLead() {
        if (subscription.isPresent() && lead.isLead() != asking) {
            look();
        }
    }

    /** Why the device behind {@code meter} does not answer; empty where it does, and where it is not asked. */
    public synchronized Optional<String> failure(SupplyId meter) {
        return meters.find(meter).map(found -> found.state().meter()).flatMap(ModbusFeeds::point)
                .map(point -> devices.get(new Address(point.host(), point.port())))
                .flatMap(device -> device.failure(meter));
    }

    @Override
    public synchronized void close() {
        subscription.ifPresent(Subscription::close);
        devices.values().forEach(ModbusDevice::close);
        devices.clear();
    }

    private void hear(List<Entry> entries) {
        if (entries.stream().anyMatch(MeterRows::isMine)) {
            look();
        }
    }

    private synchronized void look() {
        Map<Address, Map<Meter, ModbusPoint>> wanted = new HashMap<>();
        asking = lead.isLead();
        meters.all().stream().filter(record -> asking && record.isInUse()).map(MeterRecord::meter).forEach(meter ->
                point(meter).ifPresent(point -> wanted.computeIfAbsent(new Address(point.host(), point.port()),
                        any -> new HashMap<>()).put(meter, point)));
        devices.entrySet().removeIf(device -> {
            boolean gone = !wanted.containsKey(device.getKey());
            if (gone) {
                device.getValue().close();
            }
            return gone;
        });
        wanted.forEach((address, asked) -> devices.computeIfAbsent(address,
                one -> new ModbusDevice(one.host(), one.port(), this::take)).ask(asked));
    }

    private void take(Meter meter, double value) {
        try {
            readings.take(meter.id(), List.of(new Reading(clock.now().elapsedMillis(), value)));
        } catch (RuntimeException failure) {
            LOG.error("a reading of {} was not taken", meter.id(), failure);
        }
    }

    private static Optional<ModbusPoint> point(Meter meter) {
        return meter.feed() instanceof Feed.Modbus(ModbusPoint point) ? Optional.of(point) : Optional.empty();
    }
}

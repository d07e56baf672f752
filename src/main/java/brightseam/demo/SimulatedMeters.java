package brightseam.demo;

import brightseam.chamber.ArgonReading;
import brightseam.chamber.ArgonSource;
import brightseam.chamber.ArgonVessel;
import brightseam.chamber.shell.ArgonStore;
import brightseam.chamber.shell.Chambers;
import brightseam.demo.physics.Bottle;
import brightseam.demo.physics.ChamberBody;
import brightseam.demo.physics.Cylinders;
import brightseam.demo.physics.Dewar;
import brightseam.demo.physics.Gas;
import brightseam.demo.physics.Rig;
import brightseam.demo.physics.Sample;
import brightseam.demo.physics.Space;
import brightseam.device.MeterNow;
import brightseam.device.MeterRecord;
import brightseam.device.Reading;
import brightseam.device.shell.Meters;
import brightseam.device.shell.Readings;
import brightseam.kernel.SupplyId;
import brightseam.kernel.shell.DemoClock;
import brightseam.ledger.Entry;
import brightseam.ledger.Versioned;
import brightseam.ledger.shell.LastEntries;
import brightseam.ledger.shell.Lead;
import brightseam.ledger.shell.Ledger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;

/**
 * Runs the demo's simulated chamber on the shop's clock and hands the readings of its meters in. It does what the
 * record says that people did, at the moments at which they did it; a clock that is skipped gives what would have been
 * read meanwhile. Everything from here is a simulation, and the meters are registered as such.
 */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
public final class SimulatedMeters implements SmartLifecycle {

    private static final Logger LOG = LoggerFactory.getLogger(SimulatedMeters.class);
    private static final long TICK_MILLIS = 250;
    private static final Set<String> REGISTERS = Set.of("chamber", "meter");
    private static final int ENTRIES_AT_ONCE = 2_000;
    /** Of what a full dewar holds. */
    private static final double PERCENT = 100;
    private static final double DEWAR_BAR = 12;
    /** Walls that argon has dried for hours still hold a little. */
    private static final double DRIED = 0.03;

    private final Meters meters;
    private final Readings readings;
    private final Chambers chambers;
    private final ArgonStore argon;
    private final Ledger ledger;
    private final LastEntries last;
    private final DemoClock clock;
    private final Lead lead;
    private final Scene scene = new Scene();
    private ScheduledExecutorService ticking;
    private Rig rig;
    private Set<SupplyId> inUse = Set.of();
    private long position;

    SimulatedMeters(Meters meters, Readings readings, Chambers chambers, ArgonStore argon, Ledger ledger,
            LastEntries last, DemoClock clock, Lead lead) {
        this.meters = meters;
        this.readings = readings;
        this.chambers = chambers;
        this.argon = argon;
        this.ledger = ledger;
        this.last = last;
        this.clock = clock;
        this.lead = lead;
        clock.onSkip(this::catchUp);
    }

    /** Begins with a chamber full of air, now; what was recorded before does not count. */
    synchronized void switchOn() {
        position = last.last(1).stream().mapToLong(Entry::position).findFirst().orElse(0);
        rig = new Rig(ChamberBody.demo(), Arrays.stream(DemoMeter.values()).map(DemoMeter::gauge).toList(),
                clock.now().elapsedMillis());
        lookUp();
    }

    /**
     * Hands in everything that the meters would have said up to now. Whoever skips the clock need not ask for it.
     */
    public synchronized void catchUp() {
        if (rig != null) {
            follow(this::take);
        }
    }

    /** Does {@code change} to the simulated chamber as it is now. */
    synchronized void change(Consumer<Rig> change) {
        if (rig == null) {
            throw new IllegalStateException("no simulated chamber is set up");
        }
        catchUp();
        change.accept(rig);
    }

    /** What is connected holds what {@code rest} holds, of the gas that it held. */
    synchronized void drain(Cylinders rest) {
        change(now -> scene.situation().connected().forEach(label -> now.bottle(label).ifPresent(full ->
                now.deliver(label, new Bottle(rest, full.oxygenPpm(), full.moisturePpm())))));
    }

    /** What {@code question} answers of the simulated chamber as it is now. */
    synchronized <R> R ask(Function<Rig, R> question) {
        catchUp();
        return question.apply(rig);
    }

    @Override
    public void start() {
        resume();
        ticking = Executors.newSingleThreadScheduledExecutor(
                work -> Thread.ofPlatform().daemon().name("simulated-meters").unstarted(work));
        ticking.scheduleWithFixedDelay(this::tick, TICK_MILLIS, TICK_MILLIS, TimeUnit.MILLISECONDS);
    }

    @Override
    public void stop() {
        ticking.shutdownNow();
        ticking = null;
    }

    @Override
    public boolean isRunning() {
        return ticking != null;
    }

    /** After the demo has filled its registers, before the web server. */
    @Override
    public int getPhase() {
        return 1;
    }

    private void tick() {
        try {
            resume();
            catchUp();
        } catch (RuntimeException failure) {
            LOG.warn("the simulated meters could not go on: {}", failure.toString());
        }
    }

    /** After a restart: as the meters saw the chamber last. Nothing was read while the program stood still. */
    private synchronized void resume() {
        if (rig != null || meters.find(DemoMeter.CHAMBER_OXYGEN.label()).isEmpty()) {
            return;
        }
        long heard = seen(DemoMeter.CHAMBER_OXYGEN).map(Reading::elapsedMillis)
                .orElseGet(() -> clock.now().elapsedMillis());
        rig = new Rig(ChamberBody.demo(), Arrays.stream(DemoMeter.values()).map(DemoMeter::gauge).toList(), heard);
        seen(DemoMeter.CHAMBER_OXYGEN).ifPresent(seen -> {
            put(Gas.OXYGEN, seen.value(), Space.CHAMBER, Space.SLEEVES);
            rig.physics().wet(seen.value() < Gas.OXYGEN.outdoorsPpm() / 2 ? DRIED : 1);
        });
        seen(DemoMeter.CHAMBER_MOISTURE).ifPresent(seen ->
                put(Gas.MOISTURE, seen.value(), Space.CHAMBER, Space.SLEEVES));
        seen(DemoMeter.LOCK_OXYGEN).ifPresent(seen -> put(Gas.OXYGEN, seen.value(), Space.LOCK));
        lookUp();
        follow(unheard -> { });
        seen(DemoMeter.PRESSURE).map(Reading::value).filter(bar -> bar > 0).ifPresent(this::pressure);
    }

    /** What is connected stands at {@code gaugeBar}, whatever was read off it by hand before. */
    private void pressure(double gaugeBar) {
        for (String label : scene.situation().connected()) {
            argon.find(new SupplyId(label)).map(Versioned::state).filter(source -> !source.vessel().form().isLiquid())
                    .ifPresent(source -> rig.deliver(label, new Bottle(
                            new Cylinders(source.vessel().volumeLitres().doubleValue(), gaugeBar,
                                    DemoChamber.ROOM_CELSIUS.doubleValue()),
                            source.purity().oxygenPpm().doubleValue(), source.purity().moisturePpm().doubleValue())));
        }
    }

    private Optional<Reading> seen(DemoMeter meter) {
        return meters.find(meter.label()).map(known -> readings.now(meter.label())).flatMap(MeterNow::last);
    }

    private void put(Gas gas, double ppm, Space... spaces) {
        for (Space space : spaces) {
            rig.physics().put(gas, space, ppm);
        }
    }

    private void follow(Consumer<List<Sample>> taker) {
        long now = clock.now().elapsedMillis();
        List<Sample> samples = new ArrayList<>();
        List<Entry> entries = ledger.readAllAfter(position, ENTRIES_AT_ONCE);
        while (!entries.isEmpty()) {
            entries.forEach(entry -> Scene.concerns(entry).ifPresent(at -> {
                rig.run(scene.situation(), Math.min(at, now), samples::add);
                scene.apply(entry);
                if (REGISTERS.contains(entry.stream().family())) {
                    lookUp();
                }
            }));
            position = entries.getLast().position();
            entries = ledger.readAllAfter(position, ENTRIES_AT_ONCE);
        }
        rig.run(scene.situation(), now, samples::add);
        taker.accept(samples);
    }

    private void take(List<Sample> samples) {
        Map<String, List<Reading>> byMeter = new LinkedHashMap<>();
        samples.forEach(sample -> byMeter.computeIfAbsent(sample.label(), any -> new ArrayList<>())
                .add(new Reading(sample.elapsedMillis(), sample.value())));
        byMeter.forEach((label, of) -> {
            if (lead.isLead() && inUse.contains(new SupplyId(label))) {
                readings.take(new SupplyId(label), of);
            }
        });
    }

    /** What the registers say now: meters in use, flows, sources beside the manifold and connected to it. */
    private void lookUp() {
        inUse = meters.all().stream().filter(MeterRecord::isInUse).map(record -> record.meter().id())
                .collect(Collectors.toSet());
        for (ArgonSource source : argon.all()) {
            if (rig.bottle(source.id().value()).isEmpty()) {
                source.last().ifPresent(read -> rig.deliver(source.id().value(), bottle(source, read)));
            }
        }
        chambers.find(DemoChamber.STATION).ifPresent(known -> scene.register(known.state()));
    }

    private static Bottle bottle(ArgonSource source, ArgonReading read) {
        ArgonVessel vessel = source.vessel();
        double litres = vessel.volumeLitres().doubleValue();
        return new Bottle(
                vessel.form().isLiquid()
                        ? new Dewar(litres, read.levelPercent().orElseThrow().doubleValue(), DEWAR_BAR,
                                vessel.boilOffPercentPerDay().orElseThrow().doubleValue() / PERCENT)
                        : new Cylinders(litres, read.pressureBarGauge().orElseThrow().doubleValue(),
                                read.temperatureCelsius().orElseThrow().doubleValue()),
                source.purity().oxygenPpm().doubleValue(), source.purity().moisturePpm().doubleValue());
    }
}

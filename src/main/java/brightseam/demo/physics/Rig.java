package brightseam.demo.physics;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A chamber with its gauges and its argon, run through time: gas flows while there is some, cylinders empty, gauges
 * give their readings. What it gives depends on what was set and when, not on how often it was asked. Not safe for
 * several threads.
 */
public final class Rig {

    /** Air that always leaks in, litres a minute: a tight chamber of this size. Invented. */
    public static final double TIGHT_LITRES_PER_MINUTE = 0.0008;

    private static final double LOCK_LEAK_LITRES_PER_MINUTE = 0.002;
    private static final double VENTILATION_LITRES_PER_MINUTE = 5_000;
    private static final double STUFFY_LITRES_PER_MINUTE = 60;
    /** Below this a regulator gives less than it is set to. Invented, a usual second stage. */
    private static final double REGULATOR_BAR = 2;
    private static final double ROOM_CELSIUS = 20.5;
    private static final double MILLIS_PER_MINUTE = 60_000;

    private final ChamberPhysics physics;
    private final List<Gauge> gauges;
    private final Map<String, Integer> taps = new HashMap<>();
    private final Map<String, Bottle> bottles = new LinkedHashMap<>();
    private final Map<String, Double> shown = new HashMap<>();
    private final Faults faults = new Faults();
    private long atMillis;
    private boolean arcBurned;
    private double flowing;

    /** Open, full of air, at {@code startMillis} of the shop's elapsed time. */
    public Rig(ChamberBody body, List<Gauge> gauges, long startMillis) {
        this.gauges = List.copyOf(gauges);
        this.atMillis = startMillis;
        List<Tap> places = new ArrayList<>();
        for (Gauge gauge : gauges) {
            gauge.signal().tap(gauge.lag()).ifPresent(tap -> {
                taps.put(gauge.label(), places.size());
                places.add(tap);
            });
        }
        this.physics = new ChamberPhysics(body, places);
    }

    /** The gas itself, to look at or to set. */
    public ChamberPhysics physics() {
        return physics;
    }

    /** What is wrong with it. */
    public Faults faults() {
        return faults;
    }

    /** The time that it has come to. */
    public long atMillis() {
        return atMillis;
    }

    /** Stands {@code bottle} beside the manifold under {@code label}; one of that label is taken away. */
    public void deliver(String label, Bottle bottle) {
        bottles.put(label, bottle);
    }

    /** The argon of that label. */
    public Optional<Bottle> bottle(String label) {
        return Optional.ofNullable(bottles.get(label));
    }

    /** Runs under {@code now} until {@code untilMillis}, and gives each reading to {@code readings} in order. */
    public void run(Situation now, long untilMillis, Consumer<Sample> readings) {
        if (now.arc() && !arcBurned) {
            faults.arcBegins(atMillis);
        }
        arcBurned = now.arc();
        Pace pace = Pace.of(atMillis, untilMillis, now.attended());
        while (atMillis < untilMillis) {
            long step = pace.step(atMillis);
            long next = Math.min(untilMillis, (atMillis / step + 1) * step);
            pass(now, next - atMillis);
            atMillis = next;
            if (atMillis % Pace.SECOND == 0) {
                read(now, step, readings);
            }
        }
    }

    private void pass(Situation now, long millis) {
        double share = drawn(now, millis / MILLIS_PER_MINUTE);
        flowing = now.purgeLitresPerMinute() * share;
        physics.puff(faults.puffed(atMillis));
        physics.advance(conditions(now, share), Duration.ofMillis(millis));
        bottles.values().forEach(bottle -> bottle.source().stand(Duration.ofMillis(millis)));
    }

    /** What share of the flow that was set has come. */
    private double drawn(Situation now, double minutes) {
        double asked = (now.purgeLitresPerMinute() + now.lockLitresPerMinute()) * minutes;
        Optional<Bottle> feeding = feeding(now);
        if (asked == 0 || feeding.isEmpty()) {
            return asked == 0 ? 1 : 0;
        }
        double pushed = Math.min(1, feeding.get().source().gaugeBar() / REGULATOR_BAR);
        double share = feeding.get().source().draw(asked * pushed) / asked;
        return Math.rint(share * 1_000) / 1_000;
    }

    private Optional<Bottle> feeding(Situation now) {
        return now.connected().stream().map(bottles::get)
                .filter(bottle -> bottle != null && bottle.source().standardLitres() > 0).findFirst();
    }

    private Conditions conditions(Situation now, double share) {
        Optional<Bottle> feeding = feeding(now);
        return Conditions.still()
                .purging(now.purgeLitresPerMinute() * share)
                .purgingLock(now.lockLitresPerMinute() * share)
                .argon(feeding.map(Bottle::oxygenPpm).orElse(0.0),
                        feeding.map(Bottle::moisturePpm).orElse(0.0) + faults.wet())
                .leaking(TIGHT_LITRES_PER_MINUTE + faults.leak(), LOCK_LEAK_LITRES_PER_MINUTE)
                .doors(now.open(), now.outerOpen(), now.innerOpen())
                .arc(now.arc())
                .ventilated(faults.isStuffy() ? STUFFY_LITRES_PER_MINUTE : VENTILATION_LITRES_PER_MINUTE);
    }

    private void read(Situation now, long step, Consumer<Sample> readings) {
        for (Gauge gauge : gauges) {
            if (atMillis % Math.max(gauge.every().toMillis(), step) == 0) {
                double value = faults.isFrozen(gauge.label()) && shown.containsKey(gauge.label())
                        ? shown.get(gauge.label())
                        : gauge.instrument().shows(truth(gauge, now), atMillis);
                shown.put(gauge.label(), value);
                if (!faults.isSilent(gauge.label(), atMillis)) {
                    readings.accept(new Sample(gauge.label(), atMillis, value));
                }
            }
        }
    }

    private double truth(Gauge gauge, Situation now) {
        return switch (gauge.signal()) {
            case CHAMBER_OXYGEN_PPM, CHAMBER_MOISTURE_PPM, CHAMBER_FROST_POINT_CELSIUS, LOCK_OXYGEN_PPM,
                    ROOM_OXYGEN_PERCENT -> gauge.signal().fromPpm(physics.followed(taps.get(gauge.label())));
            case PURGE_LITRES_PER_MINUTE -> flowing;
            case SUPPLY_BAR -> feeding(now).map(bottle -> bottle.source().gaugeBar()).orElse(0.0);
            case DEWAR_PERCENT -> now.connected().stream().map(bottles::get)
                    .filter(bottle -> bottle != null && bottle.source() instanceof Dewar).findFirst()
                    .map(bottle -> ((Dewar) bottle.source()).levelPercent()).orElse(0.0);
            case ROOM_CELSIUS -> ROOM_CELSIUS;
        };
    }
}

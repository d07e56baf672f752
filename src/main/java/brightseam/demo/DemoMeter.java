package brightseam.demo;

import brightseam.demo.physics.Gauge;
import brightseam.demo.physics.Instrument;
import brightseam.demo.physics.Signal;
import brightseam.device.FeedTerms;
import brightseam.device.HealthRule;
import brightseam.device.MeterPlace;
import brightseam.device.MeterQuantity;
import brightseam.device.MeterTerms;
import brightseam.kernel.SupplyId;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.Optional;

/**
 * The meters at the demo's chamber, all invented and all simulated: how each is registered, and how the simulation
 * makes its readings up. What is wider than a meter's noise is its resolution only where it may stand still.
 */
enum DemoMeter {
    /** The one that decides. */
    CHAMBER_OXYGEN("G-0501", "oxygen-analyser", "Oxygen analyser, chamber", "VO-4410", 120,
            MeterPlace.CHAMBER, MeterQuantity.OXYGEN_PPM, Signal.CHAMBER_OXYGEN_PPM,
            new Range("0", "250000", "0.1"), new Follows(1, 6, 0.12, 0.004)),
    /** In the lock. */
    LOCK_OXYGEN("G-0502", "oxygen-analyser", "Oxygen analyser, lock", "VO-4411", 120,
            MeterPlace.LOCK, MeterQuantity.OXYGEN_PPM, Signal.LOCK_OXYGEN_PPM,
            new Range("0", "250000", "0.1"), new Follows(2, 8, 0.3, 0.006)),
    /** Follows slowly. */
    CHAMBER_MOISTURE("G-0503", "hygrometer", "Hygrometer, chamber", "VH-0227", 200,
            MeterPlace.CHAMBER, MeterQuantity.MOISTURE_PPM, Signal.CHAMBER_MOISTURE_PPM,
            new Range("0", "25000", "0.1"), new Follows(5, 40, 0.15, 0.01)),
    /** Behind the purge valve. */
    FLOW("G-0504", "flow-meter", "Flow meter, purge", "VW-1180", 300,
            MeterPlace.CHAMBER, MeterQuantity.FLOW_LITRES_PER_MINUTE, Signal.PURGE_LITRES_PER_MINUTE,
            new Range("-5", "300", "0.1"), new Follows(2, 0, 0.2, 0.004)),
    /** Before the regulator. */
    PRESSURE("G-0505", "pressure-gauge", "Pressure gauge, manifold", "VD-2093", 180,
            MeterPlace.SUPPLY, MeterQuantity.PRESSURE_BAR, Signal.SUPPLY_BAR,
            new Range("-1", "315", "0.1"), new Follows(10, 0, 0.05, 0)),
    /** At head height, where people breathe. */
    ROOM_OXYGEN("G-0506", "room-oxygen-monitor", "Oxygen monitor, chamber room", "VR-0714", 60,
            MeterPlace.ROOM, MeterQuantity.OXYGEN_PERCENT, Signal.ROOM_OXYGEN_PERCENT,
            new Range("0", "25", "0.01"), new Follows(5, 15, 0.02, 0)),
    /** On the shelf; its calibration is over. */
    SPARE_OXYGEN("G-0508", "oxygen-analyser", "Oxygen analyser, spare", "VO-4402", -6,
            MeterPlace.CHAMBER, MeterQuantity.OXYGEN_PPM, Signal.CHAMBER_OXYGEN_PPM,
            new Range("0", "250000", "0.1"), new Follows(1, 6, 0.12, 0.006)),
    /** Of the dewar. */
    LEVEL("G-0509", "level-gauge", "Level gauge, dewar", "VL-0051", 240,
            MeterPlace.SUPPLY, MeterQuantity.LEVEL_PERCENT, Signal.DEWAR_PERCENT,
            new Range("-1", "101", "0.1"), new Follows(60, 0, 0.02, 0)),
    /** On the manifold. */
    TEMPERATURE("G-0510", "thermometer", "Thermometer, manifold", "VT-0335", 330,
            MeterPlace.SUPPLY, MeterQuantity.TEMPERATURE_CELSIUS, Signal.ROOM_CELSIUS,
            new Range("-40", "60", "0.1"), new Follows(30, 0, 0.1, 0));

    /** Time to 90 % of a step, in times of the lag of a gauge of first order: the natural logarithm of 10. */
    private static final double RESPONSE_LAGS = Math.log(10);
    private static final long SEED = 9_000;

    private final SupplyId label;
    private final String type;
    private final String title;
    private final String serial;
    private final int daysCalibrated;
    private final MeterPlace place;
    private final MeterQuantity quantity;
    private final Signal signal;
    private final Range range;
    private final Follows follows;

    /** The ends of a range and its smallest step, in the unit of the quantity. */
    private record Range(String low, String high, String resolution) {}

    /** Seconds between readings, seconds of lag, noise near zero, noise as a share of the value. */
    private record Follows(int everySeconds, int lagSeconds, double noise, double relativeNoise) {}

    DemoMeter(String label, String type, String title, String serial, int daysCalibrated, MeterPlace place,
            MeterQuantity quantity, Signal signal, Range range, Follows follows) {
        this.label = new SupplyId(label);
        this.type = type;
        this.title = title;
        this.serial = serial;
        this.daysCalibrated = daysCalibrated;
        this.place = place;
        this.quantity = quantity;
        this.signal = signal;
        this.range = range;
        this.follows = follows;
    }

    /** Its label. */
    SupplyId label() {
        return label;
    }

    /** The key of its type in the shared table of supplies. */
    String type() {
        return type;
    }

    /** What people call it. */
    String title() {
        return title;
    }

    /** Its maker's number. */
    String serial() {
        return serial;
    }

    /** How many days its calibration still holds when the demo begins; negative where it is over. */
    int daysCalibrated() {
        return daysCalibrated;
    }

    /** How it is registered as a meter. */
    MeterTerms terms() {
        return new MeterTerms(place == MeterPlace.LOCK ? DemoChamber.LOCK : DemoChamber.STATION, place, quantity,
                new BigDecimal(range.low()), new BigDecimal(range.high()), new BigDecimal(range.resolution()),
                Duration.ofSeconds(follows.everySeconds()),
                Duration.ofSeconds(Math.round(follows.lagSeconds() * RESPONSE_LAGS)),
                new FeedTerms(FeedTerms.Kind.SIMULATED, Optional.empty(), Optional.empty()), health());
    }

    /** How its readings are made up. */
    Gauge gauge() {
        return new Gauge(label.value(), signal, Duration.ofSeconds(follows.lagSeconds()),
                Duration.ofSeconds(follows.everySeconds()),
                new Instrument(SEED + ordinal(), follows.noise(), follows.relativeNoise(),
                        Double.parseDouble(range.resolution()), Double.parseDouble(range.low()),
                        Double.parseDouble(range.high())));
    }

    /** Gas is never still; a closed cylinder, a level and a room may be. */
    private HealthRule health() {
        HealthRule usual = HealthRule.USUAL;
        return switch (this) {
            case CHAMBER_OXYGEN, LOCK_OXYGEN, SPARE_OXYGEN, CHAMBER_MOISTURE -> usual;
            case FLOW, PRESSURE, ROOM_OXYGEN, LEVEL, TEMPERATURE -> new HealthRule(usual.silentAfterReadings(),
                    Duration.ZERO, usual.lateAfter(), usual.clockOffMax());
        };
    }
}

package brightseam.demo.physics;

import java.time.Duration;
import java.util.Optional;

/** What a gauge of the simulation looks at, in the unit of its name. */
public enum Signal {
    /** Oxygen in the chamber. */
    CHAMBER_OXYGEN_PPM(Gas.OXYGEN, Space.CHAMBER),
    /** Water in the chamber. */
    CHAMBER_MOISTURE_PPM(Gas.MOISTURE, Space.CHAMBER),
    /** Frost point of the gas in the chamber. */
    CHAMBER_FROST_POINT_CELSIUS(Gas.MOISTURE, Space.CHAMBER),
    /** Oxygen in the lock. */
    LOCK_OXYGEN_PPM(Gas.OXYGEN, Space.LOCK),
    /** Oxygen in the room. */
    ROOM_OXYGEN_PERCENT(Gas.OXYGEN, Space.ROOM),
    /** Argon that flows into the chamber. */
    PURGE_LITRES_PER_MINUTE,
    /** Pressure before the regulator, above the atmosphere. */
    SUPPLY_BAR,
    /** Level of the dewar that is connected. */
    DEWAR_PERCENT,
    /** Temperature of the room. */
    ROOM_CELSIUS;

    private final Optional<Gas> gas;
    private final Space space;

    Signal(Gas gas, Space space) {
        this.gas = Optional.of(gas);
        this.space = space;
    }

    Signal() {
        this.gas = Optional.empty();
        this.space = Space.ROOM;
    }

    /** The gas and where it is drawn; empty for what is no gas. */
    Optional<Tap> tap(Duration lag) {
        return gas.map(what -> new Tap(what, space, lag));
    }

    /** {@code ppm} in the unit of this signal. */
    double fromPpm(double ppm) {
        return switch (this) {
            case CHAMBER_FROST_POINT_CELSIUS -> Frost.celsius(ppm);
            case ROOM_OXYGEN_PERCENT -> ppm / 1e4;
            case CHAMBER_OXYGEN_PPM, CHAMBER_MOISTURE_PPM, LOCK_OXYGEN_PPM -> ppm;
            case PURGE_LITRES_PER_MINUTE, SUPPLY_BAR, DEWAR_PERCENT, ROOM_CELSIUS -> ppm;
        };
    }
}

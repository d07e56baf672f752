package brightseam.chamber;

import brightseam.kernel.Moment;
import brightseam.kernel.SupplyId;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * What was read off a source of argon: pressure and temperature of a cylinder or bundle, or the level of a dewar.
 *
 * @param at when
 * @param pressureBarGauge above the room's, 0 to 400; of cylinders and bundles
 * @param temperatureCelsius of its wall or the room, -40 to 60; with the pressure
 * @param levelPercent of a full dewar, 0 to 100; of dewars
 * @param meter the gauge that told it by its feed; empty where a person read it
 */
public record ArgonReading(
        Moment at,
        Optional<BigDecimal> pressureBarGauge,
        Optional<BigDecimal> temperatureCelsius,
        Optional<BigDecimal> levelPercent,
        Optional<SupplyId> meter) {

    /** Refuses anything but a pressure with its temperature or a level, and numbers that cannot be. */
    public ArgonReading {
        pressureBarGauge.ifPresent(bar -> Amounts.between("pressure", bar, "0", "400"));
        temperatureCelsius.ifPresent(celsius -> Amounts.between("temperature", celsius, "-40", "60"));
        levelPercent.ifPresent(percent -> Amounts.between("level", percent, "0", "100"));
        if (pressureBarGauge.isPresent() != temperatureCelsius.isPresent()
                || pressureBarGauge.isPresent() == levelPercent.isPresent()) {
            throw new IllegalArgumentException("reading: a pressure with its temperature, or a level");
        }
    }

    /** A pressure at a temperature, read by a person. */
    public static ArgonReading pressure(Moment at, BigDecimal barGauge, BigDecimal celsius) {
        return new ArgonReading(at, Optional.of(barGauge), Optional.of(celsius), Optional.empty(), Optional.empty());
    }

    /** A level, read by a person. */
    public static ArgonReading level(Moment at, BigDecimal percent) {
        return new ArgonReading(at, Optional.empty(), Optional.empty(), Optional.of(percent), Optional.empty());
    }

    /** The same, told by the feed of {@code gauge}. */
    public ArgonReading by(SupplyId gauge) {
        return new ArgonReading(at, pressureBarGauge, temperatureCelsius, levelPercent, Optional.of(gauge));
    }

    /** Whether it is of a vessel of {@code form}. */
    public boolean isOf(ArgonForm form) {
        return form.isLiquid() == levelPercent.isPresent();
    }
}

package brightseam.chamber.shell;

import brightseam.chamber.ArgonReading;
import brightseam.chamber.ArgonSource;
import brightseam.chamber.Chamber;
import brightseam.device.MeterQuantity;
import brightseam.kernel.Moment;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.Optional;
import java.util.function.Function;

/** Makes a reading of a source out of what meters at its supply say. */
final class SourceReading {

    private static final BigDecimal BAR_MAX = new BigDecimal("400");
    private static final BigDecimal FULL_PERCENT = new BigDecimal("100");

    private SourceReading() {}

    /**
     * The reading, at the meter's own time; without a thermometer the last temperature that was read with it stands, or
     * the usual one of the chamber's gas.
     *
     * @param now to tell the meter's wall time by
     * @param gauge what the meter of a quantity says; empty where it says nothing that may be used
     */
    static Optional<ArgonReading> of(ArgonSource source, Chamber chamber, Moment now,
            Function<MeterQuantity, Optional<ArgonGauges.Gauged>> gauge) {
        boolean liquid = source.vessel().form().isLiquid();
        return gauge.apply(liquid ? MeterQuantity.LEVEL_PERCENT : MeterQuantity.PRESSURE_BAR).map(found -> {
            Moment at = at(found, now);
            ArgonReading reading = liquid ? ArgonReading.level(at, clamped(found.value(), FULL_PERCENT))
                    : ArgonReading.pressure(at, clamped(found.value(), BAR_MAX),
                            celsius(source, chamber, gauge.apply(MeterQuantity.TEMPERATURE_CELSIUS)));
            return reading.by(found.meter());
        });
    }

    private static BigDecimal celsius(ArgonSource source, Chamber chamber, Optional<ArgonGauges.Gauged> thermometer) {
        return thermometer.map(found -> decimal(found.value()))
                .or(() -> source.last().flatMap(ArgonReading::temperatureCelsius))
                .orElse(chamber.terms().flows().temperatureCelsius());
    }

    private static Moment at(ArgonGauges.Gauged found, Moment now) {
        return now.plus(Duration.ofMillis(found.elapsedMillis() - now.elapsedMillis()));
    }

    private static BigDecimal clamped(double value, BigDecimal most) {
        return decimal(value).max(BigDecimal.ZERO).min(most);
    }

    private static BigDecimal decimal(double value) {
        return BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN);
    }
}

package brightseam.weld.shell;

import brightseam.device.MeterNow;
import brightseam.device.Trouble;
import brightseam.weld.GasReading;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads a meter for an arc. */
final class ArcReadings {

    private ArcReadings() {}

    /** What {@code meter} says, held against {@code ppmMax}; rounded up, never in favour of the weld. */
    static GasReading reading(MeterNow meter, BigDecimal ppmMax) {
        return new GasReading(meter.meter().id(),
                meter.last().map(last -> BigDecimal.valueOf(last.value()).setScale(1, RoundingMode.CEILING)), ppmMax,
                meter.isUsable() ? Optional.empty() : Optional.of(meter.troubles().stream()
                        .filter(Trouble::stopsUse).map(ArcReadings::words).collect(Collectors.joining(", "))));
    }

    private static String words(Trouble trouble) {
        return trouble.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}

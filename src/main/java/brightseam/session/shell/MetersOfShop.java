package brightseam.session.shell;

import brightseam.device.MeterNow;
import brightseam.device.MeterPlace;
import brightseam.device.MeterQuantity;
import brightseam.device.Reading;
import brightseam.device.Series;
import brightseam.device.SeriesEvidence;
import brightseam.device.Trouble;
import brightseam.device.shell.Readings;
import brightseam.kernel.Moment;
import brightseam.kernel.StationId;
import brightseam.kernel.shell.ShopClock;
import brightseam.purge.DewPoint;
import brightseam.purge.RoomAir;
import brightseam.session.GasLimits;
import brightseam.session.MeterFact;
import brightseam.session.Stretch;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.springframework.stereotype.Component;

/** The meters of the shop's register. Ppm are rounded up and the room's oxygen down, never in favour. */
@Component
final class MetersOfShop implements GasMeters {

    private static final int DECIMALS = 1;

    private final Readings readings;
    private final ShopClock clock;

    MetersOfShop(Readings readings, ShopClock clock) {
        this.readings = readings;
        this.clock = clock;
    }

    @Override
    public Optional<MeterFact> oxygen(StationId chamber) {
        return readings.now(chamber, MeterPlace.CHAMBER, MeterQuantity.OXYGEN_PPM)
                .map(meter -> fact(meter, RoundingMode.CEILING));
    }

    @Override
    public Optional<MeterFact> moisture(StationId chamber) {
        return moistureMeter(chamber).map(meter -> fact(meter, RoundingMode.CEILING));
    }

    @Override
    public Optional<MeterFact> lockOxygen(StationId lock) {
        return readings.now(lock, MeterPlace.LOCK, MeterQuantity.OXYGEN_PPM)
                .map(meter -> fact(meter, RoundingMode.CEILING));
    }

    @Override
    public Optional<MeterFact> room(StationId chamber) {
        return readings.now(chamber, MeterPlace.ROOM, MeterQuantity.OXYGEN_PERCENT)
                .map(meter -> fact(meter, RoundingMode.FLOOR));
    }

    @Override
    public Optional<Stretch> oxygenLately(StationId chamber, GasLimits limits, Moment now) {
        return readings.now(chamber, MeterPlace.CHAMBER, MeterQuantity.OXYGEN_PPM)
                .map(meter -> lately(meter, limits, now));
    }

    @Override
    public Optional<Stretch> moistureLately(StationId chamber, GasLimits limits, Moment now) {
        return moistureMeter(chamber).map(meter -> lately(meter, limits, now));
    }

    @Override
    public Optional<Highest> highest(StationId chamber, Moment from, Moment to, Duration longestGap) {
        return readings.now(chamber, MeterPlace.CHAMBER, MeterQuantity.OXYGEN_PPM)
                .map(meter -> SeriesEvidence.of(
                        readings.series(meter.meter().id(), from.elapsedMillis(), to.elapsedMillis()),
                        from.elapsedMillis(), to.elapsedMillis(), Double.POSITIVE_INFINITY, longestGap.toMillis()))
                .filter(evidence -> evidence.count() > 0)
                .map(evidence -> new Highest(
                        rounded(evidence.highest(), RoundingMode.CEILING), evidence.isProven()));
    }

    /** A meter for ppm is asked first; a dew point is turned into ppm at one atmosphere. */
    private Optional<MeterNow> moistureMeter(StationId chamber) {
        return readings.now(chamber, MeterPlace.CHAMBER, MeterQuantity.MOISTURE_PPM)
                .or(() -> readings.now(chamber, MeterPlace.CHAMBER, MeterQuantity.DEW_POINT_CELSIUS));
    }

    private Stretch lately(MeterNow meter, GasLimits limits, Moment now) {
        long from = now.elapsedMillis() - limits.dwell().toMillis() - 2 * limits.longestGap().toMillis();
        Series series = readings.series(meter.meter().id(), Math.max(0, from), now.elapsedMillis());
        List<Stretch.Point> points = IntStream.range(0, series.size()).mapToObj(i -> new Stretch.Point(
                series.millis(i), value(meter, series.value(i)), series.isUsable(i))).toList();
        return new Stretch(meter.meter().id(), troubles(meter), points);
    }

    private MeterFact fact(MeterNow meter, RoundingMode rounding) {
        Moment now = clock.now();
        return new MeterFact(meter.meter().id(),
                meter.last().map(Reading::value).map(value -> rounded(value(meter, value), rounding)),
                meter.last().map(last -> now.plus(Duration.ofMillis(last.elapsedMillis() - now.elapsedMillis()))),
                troubles(meter), meter.simulated());
    }

    private static List<String> troubles(MeterNow meter) {
        return meter.troubles().stream().filter(Trouble::stopsUse)
                .map(trouble -> trouble.name().toLowerCase(Locale.ROOT).replace('_', '-')).toList();
    }

    private static double value(MeterNow meter, double read) {
        if (meter.meter().quantity() != MeterQuantity.DEW_POINT_CELSIUS) {
            return read;
        }
        double celsius = Math.clamp(read, DewPoint.CELSIUS_MIN, DewPoint.CELSIUS_MAX);
        return DewPoint.read(celsius).ppm(RoomAir.ATMOSPHERE_BAR);
    }

    private static BigDecimal rounded(double value, RoundingMode rounding) {
        return BigDecimal.valueOf(value).setScale(DECIMALS, rounding);
    }
}

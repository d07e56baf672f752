package brightseam.device;

import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import java.math.BigDecimal;
import java.time.Duration;

/** How a meter is installed, as it is written down; see {@link Meter} for the parts. */
public record MeterTerms(StationId station, MeterPlace place, MeterQuantity quantity, BigDecimal rangeLow,
        BigDecimal rangeHigh, BigDecimal resolution, Duration every, Duration responseTime, FeedTerms feed,
        HealthRule health) {

    /** Refuses what {@link Meter} refuses. */
    public MeterTerms {
        check(station, place, quantity, rangeLow, rangeHigh, resolution, every, responseTime, feed, health);
    }

    /** The terms of {@code meter}. */
    public static MeterTerms of(Meter meter) {
        return new MeterTerms(meter.station(), meter.place(), meter.quantity(), decimal(meter.rangeLow()),
                decimal(meter.rangeHigh()), decimal(meter.resolution()), meter.every(), meter.responseTime(),
                FeedTerms.of(meter.feed()), meter.health());
    }

    /** The meter {@code id} under these terms. */
    public Meter meter(SupplyId id) {
        return new Meter(id, station, place, quantity, rangeLow.doubleValue(), rangeHigh.doubleValue(),
                resolution.doubleValue(), every, responseTime, feed.feed(), health);
    }

    private static void check(StationId station, MeterPlace place, MeterQuantity quantity, BigDecimal rangeLow,
            BigDecimal rangeHigh, BigDecimal resolution, Duration every, Duration responseTime, FeedTerms feed,
            HealthRule health) {
        new Meter(new SupplyId("ANY"), station, place, quantity, rangeLow.doubleValue(), rangeHigh.doubleValue(),
                resolution.doubleValue(), every, responseTime, feed.feed(), health);
    }

    private static BigDecimal decimal(double value) {
        return new BigDecimal(SeriesText.plain(value));
    }
}

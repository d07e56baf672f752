package brightseam.device;

import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import java.time.Duration;

/**
 * A meter as it is installed. Its calibration is a matter of the supply register, where it is a gauge under the same
 * label.
 *
 * @param id its label
 * @param station the chamber, lock or room whose gas it looks at
 * @param place where of it
 * @param quantity what it measures
 * @param rangeLow the low end of its range, in the quantity's unit; a reading at it or below is out of range
 * @param rangeHigh the high end, likewise
 * @param resolution the smallest step that it shows, above zero
 * @param every how far its readings are apart; for typed ones the longest time from one to the next
 * @param responseTime how long it takes to follow the gas (the time to 90 % of a step, from its data sheet)
 * @param feed how its readings come in
 * @param health when it is in trouble
 */
public record Meter(SupplyId id, StationId station, MeterPlace place, MeterQuantity quantity, double rangeLow,
        double rangeHigh, double resolution, Duration every, Duration responseTime, Feed feed, HealthRule health) {

    /** Refuses an empty range, a resolution or interval that is not above zero, and a negative response time. */
    public Meter {
        if (!(rangeLow < rangeHigh) || !(resolution > 0)) {
            throw new IllegalArgumentException("range: low below high; resolution: above zero");
        }
        if (every.isNegative() || every.isZero() || responseTime.isNegative()) {
            throw new IllegalArgumentException("time between readings: above zero; response time: from zero");
        }
    }

    /** A meter with the usual rules of health. */
    public Meter(SupplyId id, StationId station, MeterPlace place, MeterQuantity quantity, double rangeLow,
            double rangeHigh, double resolution, Duration every, Duration responseTime, Feed feed) {
        this(id, station, place, quantity, rangeLow, rangeHigh, resolution, every, responseTime, feed,
                HealthRule.USUAL);
    }

    /** Whether a program makes its readings up. */
    public boolean isSimulated() {
        return feed instanceof Feed.Simulated;
    }

    /** Whether {@code value} lies at an end of the range or beyond, where it says no more than that. */
    public boolean isOutOfRange(double value) {
        return !(value > rangeLow && value < rangeHigh);
    }

    /** How long it may be quiet before it is silent; for typed readings the interval. */
    public long silentAfterMillis() {
        return feed instanceof Feed.Typed typed ? typed.interval().toMillis()
                : every.toMillis() * health.silentAfterReadings();
    }
}

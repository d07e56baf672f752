package brightseam.chart;

import java.util.List;
import java.util.Optional;

/**
 * The curve that was fitted to what was measured, carried on into the time to come.
 *
 * @param curve oldest first
 * @param share how sure the band is, such as 0.9
 * @param arrival when the limit is reached; empty where it is not
 */
public record ChartFit(List<Spot> curve, double share, Optional<Arrival> arrival) {

    /** Copies the curve. */
    public ChartFit {
        curve = List.copyOf(curve);
    }

    /** One spot of the curve with its band, at a time on the shop's elapsed time line. */
    public record Spot(long atMillis, double low, double middle, double high) {}

    /** When the limit is reached, and the band of that, on the shop's elapsed time line. */
    public record Arrival(long atMillis, long earliestMillis, long latestMillis) {}
}

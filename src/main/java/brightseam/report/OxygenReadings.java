package brightseam.report;

import brightseam.chart.ChartPoint;
import brightseam.kernel.SupplyId;
import java.util.List;

/** Where the readings of a meter are found that a record shows; the record itself holds their hash. */
@FunctionalInterface
public interface OxygenReadings {

    /** Where nobody keeps readings. */
    OxygenReadings NONE = (meter, fromMillis, toMillis) -> List.of();

    /**
     * The readings of {@code meter} from {@code fromMillis} to {@code toMillis} on the shop's elapsed time line, oldest
     * first, thinned for a chart so that no peak is lost; values in ppm by volume.
     */
    List<ChartPoint> between(SupplyId meter, long fromMillis, long toMillis);
}

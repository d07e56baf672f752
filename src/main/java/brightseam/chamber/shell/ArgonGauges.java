package brightseam.chamber.shell;

import brightseam.chamber.Chamber;
import brightseam.device.MeterQuantity;
import brightseam.device.Series;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import java.util.List;
import java.util.Optional;

/** What the meters at a chamber's argon say; only values that may be decided on. */
interface ArgonGauges {

    /** A value of a meter at a time of the elapsed time line. */
    record Gauged(SupplyId meter, long elapsedMillis, double value) {}

    /** What the meter of {@code quantity} at the supply of {@code chamber} says now. */
    Optional<Gauged> now(StationId chamber, MeterQuantity quantity);

    /** The last value of that meter from {@code fromMillis} to {@code toMillis}. */
    Optional<Gauged> lastIn(StationId chamber, MeterQuantity quantity, long fromMillis, long toMillis);

    /**
     * The series of what flowed into {@code chamber} and its lock: of a meter in the supply, where there is one, else
     * of every meter behind it.
     */
    List<Series> flows(Chamber chamber, long fromMillis, long toMillis);
}

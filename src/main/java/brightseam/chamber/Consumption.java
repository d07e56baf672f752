package brightseam.chamber;

import brightseam.purge.CylinderContent;
import brightseam.purge.DewarContent;
import brightseam.purge.RoomAir;
import brightseam.purge.StandardLitres;

/** What was used, from readings: by what the sources held before and after, and by what flowed. */
public final class Consumption {

    private static final double MILLIS_PER_MINUTE = 60_000;

    private Consumption() {}

    /**
     * What flowed, with how much of the time a meter told it.
     *
     * @param standardLitres by the trapezium rule between readings that lie no further apart than allowed
     * @param provenMillis the time between such readings
     * @param unprovenMillis the rest of the time that was asked about: nothing is counted for it
     */
    public record Flowed(double standardLitres, long provenMillis, long unprovenMillis) {}

    /** All that {@code vessel} holds by {@code reading}, the rest that stays included, in standard litres. */
    public static double contentStandardLitres(ArgonVessel vessel, ArgonReading reading) {
        double litres = vessel.volumeLitres().doubleValue();
        return vessel.form().isLiquid()
                ? new DewarContent(litres, reading.levelPercent().orElseThrow().doubleValue(), 0).standardLitres()
                : new CylinderContent(litres, reading.pressureBarGauge().orElseThrow().doubleValue(),
                        reading.temperatureCelsius().orElseThrow().doubleValue()).standardLitres();
    }

    /**
     * What left {@code vessel} between two readings, in standard litres; below zero where it holds more afterwards. For
     * a dewar this includes what boiled off.
     */
    public static double byContent(ArgonVessel vessel, ArgonReading before, ArgonReading after) {
        return contentStandardLitres(vessel, before) - contentStandardLitres(vessel, after);
    }

    /**
     * What flowed from {@code fromMillis} to {@code toMillis}.
     *
     * @param millis when each reading was taken, in order of time
     * @param litresPerMinute what each reading says, at one atmosphere and {@code celsius}
     * @param longestGapMillis readings further apart prove nothing about the time between them
     */
    public static Flowed byFlow(long[] millis, double[] litresPerMinute, long fromMillis, long toMillis,
            double celsius, long longestGapMillis) {
        double litres = 0;
        long proven = 0;
        for (int i = 1; i < millis.length; i++) {
            long from = Math.max(fromMillis, millis[i - 1]);
            long to = Math.min(toMillis, millis[i]);
            long apart = millis[i] - millis[i - 1];
            if (to > from && apart <= longestGapMillis) {
                double begins = between(millis, litresPerMinute, i, from);
                double ends = between(millis, litresPerMinute, i, to);
                litres += (begins + ends) / 2 * (to - from) / MILLIS_PER_MINUTE;
                proven += to - from;
            }
        }
        double standard = StandardLitres.of(Math.max(0, litres), RoomAir.ATMOSPHERE_BAR, celsius);
        return new Flowed(standard, proven, Math.max(0, toMillis - fromMillis - proven));
    }

    private static double between(long[] millis, double[] values, int next, long at) {
        double share = (double) (at - millis[next - 1]) / (millis[next] - millis[next - 1]);
        return values[next - 1] + (values[next] - values[next - 1]) * share;
    }
}

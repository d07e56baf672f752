package brightseam.chamber;

import brightseam.kernel.Moment;
import brightseam.kernel.SupplyId;
import brightseam.purge.CylinderContent;
import brightseam.purge.DewarContent;
import java.time.Duration;
import java.util.Optional;

/**
 * What one source holds, in standard litres (15 °C, one atmosphere).
 *
 * @param supply its label
 * @param liquid whether it is a dewar
 * @param connected whether it feeds the chamber that is asked about
 * @param totalStandardLitres all of it
 * @param restStandardLitres what stays in it
 * @param boilOffStandardLitresPerHour what evaporates while nothing is drawn; zero for compressed gas
 */
public record ArgonLeft(
        SupplyId supply,
        boolean liquid,
        boolean connected,
        double totalStandardLitres,
        double restStandardLitres,
        double boilOffStandardLitresPerHour) {

    private static final double MILLIS_PER_HOUR = 3_600_000;
    /** The temperature to which filling pressures refer. */
    private static final double FULL_CELSIUS = 15;

    /**
     * What {@code source} holds at {@code now} by its last reading: compressed gas as a real gas at the temperature
     * that was read with the pressure, liquid by its level less what boiled off since, as if nothing had been drawn.
     *
     * @param connected whether it feeds the chamber that is asked about
     * @return empty where it was never read
     */
    public static Optional<ArgonLeft> of(ArgonSource source, Manifold manifold, boolean connected, Moment now) {
        return source.last().map(reading -> source.vessel().form().isLiquid()
                ? liquid(source, manifold, connected, reading, now) : gas(source, manifold, connected, reading));
    }

    /** What can be drawn, in standard litres. */
    public double usableStandardLitres() {
        return Math.max(0, totalStandardLitres - restStandardLitres);
    }

    /** What can be drawn as a share of what could be when full, 0 to 1; empty where full is unknown. */
    public Optional<Double> share(ArgonVessel vessel, Manifold manifold) {
        return full(vessel).map(full -> {
            double usableFull = full - restStandardLitres(vessel, manifold, FULL_CELSIUS);
            return usableFull <= 0 ? 0.0 : Math.min(1, usableStandardLitres() / usableFull);
        });
    }

    /** What {@code vessel} holds when full, in standard litres; empty where its full pressure is not known. */
    public static Optional<Double> full(ArgonVessel vessel) {
        double litres = vessel.volumeLitres().doubleValue();
        return vessel.form().isLiquid() ? Optional.of(new DewarContent(litres, 100, 0).standardLitres())
                : vessel.fullPressureBarGauge().map(bar ->
                        new CylinderContent(litres, bar.doubleValue(), FULL_CELSIUS).standardLitres());
    }

    private static double restStandardLitres(ArgonVessel vessel, Manifold manifold, double celsius) {
        double litres = vessel.volumeLitres().doubleValue();
        return vessel.form().isLiquid()
                ? new DewarContent(litres, manifold.restLevelPercent().doubleValue(), 0).standardLitres()
                : new CylinderContent(litres, manifold.endPressureBarGauge().doubleValue(), celsius).standardLitres();
    }

    private static ArgonLeft gas(ArgonSource source, Manifold manifold, boolean connected, ArgonReading reading) {
        double celsius = reading.temperatureCelsius().orElseThrow().doubleValue();
        CylinderContent content = new CylinderContent(source.vessel().volumeLitres().doubleValue(),
                reading.pressureBarGauge().orElseThrow().doubleValue(), celsius);
        return new ArgonLeft(source.id(), false, connected, content.standardLitres(),
                restStandardLitres(source.vessel(), manifold, celsius), 0);
    }

    private static ArgonLeft liquid(
            ArgonSource source, Manifold manifold, boolean connected, ArgonReading reading, Moment now) {
        DewarContent read = new DewarContent(source.vessel().volumeLitres().doubleValue(),
                reading.levelPercent().orElseThrow().doubleValue(),
                source.vessel().boilOffPercentPerDay().orElseThrow().doubleValue());
        Duration since = now.since(reading.at());
        DewarContent left = read.afterStanding(Math.max(0, since.toMillis()) / MILLIS_PER_HOUR);
        return new ArgonLeft(source.id(), true, connected, left.standardLitres(),
                restStandardLitres(source.vessel(), manifold, FULL_CELSIUS), left.boilOffStandardLitresPerHour());
    }
}

package brightseam.chamber;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * What argon comes in.
 *
 * @param form cylinder, bundle or dewar
 * @param volumeLitres water volume of all cylinders together, or the litres of liquid that a full dewar holds
 * @param fullPressureBarGauge what a full one is filled to, at 15 °C; of cylinders and bundles, where known
 * @param boilOffPercentPerDay how much of a full dewar evaporates in a day with its valves closed; of dewars only
 */
public record ArgonVessel(
        ArgonForm form,
        BigDecimal volumeLitres,
        Optional<BigDecimal> fullPressureBarGauge,
        Optional<BigDecimal> boilOffPercentPerDay) {

    /** Refuses a vessel without volume, a dewar without boil-off, and numbers that are not the form's. */
    public ArgonVessel {
        Amounts.positive("volume", volumeLitres);
        fullPressureBarGauge.ifPresent(bar -> Amounts.between("full pressure", bar, "1", "400"));
        boilOffPercentPerDay.ifPresent(percent -> Amounts.between("boil-off", percent, "0", "100"));
        if (form.isLiquid() ? boilOffPercentPerDay.isEmpty() || fullPressureBarGauge.isPresent()
                : boilOffPercentPerDay.isPresent()) {
            throw new IllegalArgumentException("boil-off: of a dewar, always, and of nothing else");
        }
    }

    /** A cylinder of {@code waterLitres}, filled to {@code fullBarGauge}. */
    public static ArgonVessel cylinder(BigDecimal waterLitres, BigDecimal fullBarGauge) {
        return new ArgonVessel(ArgonForm.CYLINDER, waterLitres, Optional.of(fullBarGauge), Optional.empty());
    }

    /** A bundle whose cylinders hold {@code waterLitres} together, filled to {@code fullBarGauge}. */
    public static ArgonVessel bundle(BigDecimal waterLitres, BigDecimal fullBarGauge) {
        return new ArgonVessel(ArgonForm.BUNDLE, waterLitres, Optional.of(fullBarGauge), Optional.empty());
    }

    /** A dewar that holds {@code capacityLitres} of liquid and loses {@code boilOffPercentPerDay} of them. */
    public static ArgonVessel dewar(BigDecimal capacityLitres, BigDecimal boilOffPercentPerDay) {
        return new ArgonVessel(ArgonForm.DEWAR, capacityLitres, Optional.empty(), Optional.of(boilOffPercentPerDay));
    }
}

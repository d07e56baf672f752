package brightseam.purge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked examples of textbooks and sheets; what was printed coarser than it can be computed says so. */
class PublishedExamplesTest {

    private static final double ATMOSPHERE = 1.01325;
    private static final double MILLIMETRE_MERCURY = ATMOSPHERE / 760;
    private static final double PSI = 0.0689475729;
    private static final double GALLON_LITRES = 3.785411784;
    private static final double POUND_MOLE = 453.59237;
    private static final double FAHRENHEIT_75 = (75 - 32) / 1.8;
    private static final double NITROGEN_POUNDS_PER_POUND_MOLE = 28.01;

    /** Crowl and Louvar, chapter 7 (from memory): printed 3.37, 4 purges, 1.33 lb-mol, 37.2 lb of nitrogen. */
    @Test
    void vacuum_purge_of_a_thousand_gallons() {
        var vessel = new CyclePurge.Vessel(1000 * GALLON_LITRES, 20 * MILLIMETRE_MERCURY, ATMOSPHERE, FAHRENHEIT_75);
        var needed = (CyclePurge.Needed) CyclePurge.to(vessel, 210_000, 1, 0);
        assertThat(needed.exactCycles()).isCloseTo(3.3690, within(0.0001));
        assertThat(needed.cycles()).isEqualTo(4);
        assertThat(needed.ppmAfter()).isLessThan(1);
        assertThat(needed.moles() / POUND_MOLE).isCloseTo(1.3333, within(0.0005));
        assertThat(needed.moles() / POUND_MOLE * NITROGEN_POUNDS_PER_POUND_MOLE).isCloseTo(37.33, within(0.03));
    }

    /** Crowl and Louvar, chapter 7 (from memory): printed 6.6, 7 purges, 13.0 lb-mol, 365 lb of nitrogen. */
    @Test
    void pressure_purge_of_a_thousand_gallons() {
        var vessel = new CyclePurge.Vessel(1000 * GALLON_LITRES, 14.7 * PSI, 94.7 * PSI, FAHRENHEIT_75);
        var needed = (CyclePurge.Needed) CyclePurge.to(vessel, 210_000, 1, 0);
        assertThat(needed.exactCycles()).isCloseTo(6.578, within(0.001));
        assertThat(needed.cycles()).isEqualTo(7);
        assertThat(needed.moles() / POUND_MOLE).isCloseTo(13.04, within(0.01));
        assertThat(needed.moles() / POUND_MOLE * NITROGEN_POUNDS_PER_POUND_MOLE).isCloseTo(365.2, within(0.3));
    }

    /** Crowl and Louvar, chapter 7 (from memory): printed 2830 ft3 after rounding the logarithm, 2821 with pure gas. */
    @Test
    void sweep_through_with_impure_nitrogen() {
        assertThat(volumes(100, 210_000, 12_500) * 1000).isCloseTo(2828.9, within(0.1));
        assertThat(volumes(0, 210_000, 12_500) * 1000).isCloseTo(2821.4, within(0.1));
    }

    /** A sheet of process rules: 3.1 volumes, read from a chart, so only to 2 %. */
    @Test
    void dilution_from_21_to_1_percent() {
        assertThat(volumes(0, 210_000, 10_000)).isCloseTo(3.0445, within(0.0001)).isCloseTo(3.1, withPercentage(2));
    }

    /** The same sheet: 2 cycles, 0.84 % reached, 4 volumes a cycle and 8 in all. */
    @Test
    void pressure_cycles_to_five_atmospheres() {
        var vessel = new CyclePurge.Vessel(100, ATMOSPHERE, 5 * ATMOSPHERE, 20);
        var needed = (CyclePurge.Needed) CyclePurge.to(vessel, 210_000, 10_000, 0);
        assertThat(needed.cycles()).isEqualTo(2);
        assertThat(needed.ppmAfter()).isCloseTo(8400, within(0.01));
        assertThat(needed.atmosphericVolumes()).isCloseTo(8, within(1e-9));
    }

    /** The same sheet: n = 4.4, 5 cycles, 2.5 volumes in all. */
    @Test
    void vacuum_cycles_to_half_an_atmosphere() {
        var vessel = new CyclePurge.Vessel(100, ATMOSPHERE / 2, ATMOSPHERE, 20);
        var needed = (CyclePurge.Needed) CyclePurge.to(vessel, 210_000, 10_000, 0);
        assertThat(needed.exactCycles()).isCloseTo(4.392, within(0.001));
        assertThat(needed.cycles()).isEqualTo(5);
        assertThat(needed.atmosphericVolumes()).isCloseTo(2.5, within(1e-9));
    }

    /** A solved exercise: n = 2.20, 3 cycles, 2.976 tank volumes. */
    @Test
    void vacuum_cycles_to_six_millimetres() {
        var vessel = new CyclePurge.Vessel(100, 6 * MILLIMETRE_MERCURY, ATMOSPHERE, 20);
        var needed = (CyclePurge.Needed) CyclePurge.to(vessel, 210_000, 5, 0);
        assertThat(needed.exactCycles()).isCloseTo(2.1988, within(0.0001));
        assertThat(needed.cycles()).isEqualTo(3);
        assertThat(needed.atmosphericVolumes()).isCloseTo(2.976, within(0.001));
    }

    /** An exercise whose answer is not printed: sweep 150 ft3 to 1 %, or fill it to 150 psia; computed here. */
    @Test
    void sweeping_or_filling_150_cubic_feet() {
        assertThat(volumes(0, 210_000, 10_000)).isCloseTo(3.04, within(0.005));
        var vessel = new CyclePurge.Vessel(4247.5, 14.7 * PSI, 150 * PSI, 25);
        var needed = (CyclePurge.Needed) CyclePurge.to(vessel, 210_000, 10_000, 0);
        assertThat(needed.cycles()).isEqualTo(2);
        assertThat(needed.exactCycles()).isCloseTo(Math.log(21) / Math.log(150 / 14.7), within(1e-9));
    }

    /** Derived from the sweep-through formula alone, from 20.946 % on; no sheet prints it. */
    @ParameterizedTest
    @CsvSource({
        "500, 0, 6.038", "500, 2, 6.042", "500, 5, 6.048",
        "50, 0, 8.340", "50, 2, 8.381", "50, 5, 8.446",
        "30, 0, 8.851", "30, 2, 8.920", "30, 5, 9.033",
        "5, 0, 10.643", "5, 2, 11.154",
    })
    void volumes_from_air(double limitPpm, double supplyPpm, double volumes) {
        assertThat(volumes(supplyPpm, RoomAir.OXYGEN_PPM, limitPpm)).isCloseTo(volumes, within(0.0006));
    }

    private static double volumes(double supplyPpm, double startPpm, double limitPpm) {
        return ((SweepPurge.Needed) new MixingModel(1, 1, supplyPpm, 1, 0).sweep(startPpm, limitPpm)).volumes();
    }
}

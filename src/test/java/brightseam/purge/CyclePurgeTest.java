package brightseam.purge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class CyclePurgeTest {

    private static final CyclePurge.Vessel LOCK = new CyclePurge.Vessel(30, 0.1, 1.01325, 20);

    @Test
    void cycles_with_impure_gas_go_to_the_gas_and_never_below_it() {
        assertThat(CyclePurge.to(LOCK, 209_460, 5, 5)).isEqualTo(new CyclePurge.Impossible(5, 5));
        var needed = (CyclePurge.Needed) CyclePurge.to(LOCK, 209_460, 30, 5);
        assertThat(needed.ppmAfter()).isBetween(5.0, 30.0);
        assertThat(LOCK.ppmAfter(needed.cycles() - 1, 209_460, 5)).isGreaterThan(30);
        assertThat(CyclePurge.to(LOCK, 20, 30, 5)).isEqualTo(new CyclePurge.Needed(0, 0, 20, 0, 0));
    }

    @Test
    void gas_is_that_of_the_whole_cycles_in_moles_and_standard_litres() {
        var needed = (CyclePurge.Needed) CyclePurge.to(LOCK, 209_460, 30, 0);
        double litresAtOneAtmosphere = needed.cycles() * 30 * (1.01325 - 0.1) / 1.01325;
        assertThat(needed.argonStandardLitres()).isCloseTo(litresAtOneAtmosphere * 288.15 / 293.15, within(0.2));
        assertThat(needed.atmosphericVolumes() * 30).isCloseTo(litresAtOneAtmosphere, within(1e-9));
    }

    /** Each cycle counted by hand, molecules in and out, as a vessel that is drawn down and filled. */
    @Test
    void cycles_one_by_one_come_to_the_same() {
        Random random = new Random(7);
        for (int i = 0; i < 1000; i++) {
            double low = 0.005 + random.nextDouble();
            double high = low * (1.05 + 5 * random.nextDouble());
            var vessel = new CyclePurge.Vessel(100, low, high, 20);
            double supply = 10 * random.nextDouble();
            double limit = supply + 0.5 + 1000 * random.nextDouble();
            var needed = (CyclePurge.Needed) CyclePurge.to(vessel, 209_460, limit, supply);
            double ppm = 209_460;
            int counted = 0;
            while (ppm > limit) {
                ppm = (ppm * low + supply * (high - low)) / high;
                counted++;
            }
            assertThat(needed.cycles()).isEqualTo(counted);
            assertThat(needed.ppmAfter()).isCloseTo(ppm, within(1e-6 * ppm));
        }
    }

    @Test
    void a_deeper_vacuum_never_takes_more_cycles() {
        int before = Integer.MAX_VALUE;
        for (double low = 0.9; low > 0.001; low *= 0.8) {
            var vessel = new CyclePurge.Vessel(30, low, 1.01325, 20);
            int cycles = ((CyclePurge.Needed) CyclePurge.to(vessel, 209_460, 30, 2)).cycles();
            assertThat(cycles).isLessThanOrEqualTo(before);
            before = cycles;
        }
    }

    @Test
    void pressures_have_to_be_absolute_and_in_order() {
        assertThatThrownBy(() -> new CyclePurge.Vessel(30, 0, 1, 20)).hasMessageContaining("lower pressure");
        assertThatThrownBy(() -> new CyclePurge.Vessel(30, 1, 1, 20)).hasMessageContaining("above the lower");
    }
}

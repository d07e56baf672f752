package brightseam.purge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import brightseam.purge.DewPoint.Phase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DewPointTest {

    private static final double ATMOSPHERE = 1.01325;

    /** A printed two-degree table of an instrument supplier, frost point against ppm at 1013 hPa. */
    @ParameterizedTest
    @CsvSource({
        "0, 6033", "-10, 2566", "-20, 1019", "-30, 375.3", "-40, 126.8", "-44, 80.03", "-48, 49.67",
        "-50, 38.89", "-54, 23.51", "-58, 13.96", "-60, 10.68", "-70, 2.584", "-76, 1.031", "-80, 0.5410",
    })
    void ppm_over_ice_are_those_of_a_printed_table(double celsius, double ppm) {
        assertThat(new DewPoint(celsius, Phase.ICE).ppm(ATMOSPHERE)).isCloseTo(ppm, withPercentage(1));
        assertThat(DewPoint.ofPpm(ppm, ATMOSPHERE, Phase.ICE).celsius()).isCloseTo(celsius, within(0.1));
    }

    /** A second page: some 127.5 at -40, 1024 at -20 and 2.6 at -70 degC, and 16.0 for -40 degC at 7 bar gauge. */
    @Test
    void a_second_table_agrees_and_pressure_thins_the_water() {
        assertThat(new DewPoint(-40, Phase.ICE).ppm(ATMOSPHERE)).isCloseTo(127.5, withPercentage(1));
        assertThat(new DewPoint(-20, Phase.ICE).ppm(ATMOSPHERE)).isCloseTo(1024, withPercentage(1));
        assertThat(new DewPoint(-70, Phase.ICE).ppm(ATMOSPHERE)).isCloseTo(2.6, withPercentage(1));
        assertThat(new DewPoint(-40, Phase.ICE).ppm(7 + ATMOSPHERE)).isCloseTo(16.0, withPercentage(1));
        assertThat(new DewPoint(-40, Phase.ICE).at(7 + ATMOSPHERE, ATMOSPHERE).ppm(ATMOSPHERE))
                .isCloseTo(16.0, withPercentage(1));
    }

    /** Hyland and Wexler over ice (ASHRAE), and Sonntag 1990 over ice; coefficients from memory. */
    @Test
    void two_other_equations_over_ice_agree_to_a_third_of_a_percent() {
        for (double celsius = -75; celsius <= 0; celsius++) {
            double ours = new DewPoint(celsius, Phase.ICE).vapourPascal();
            assertThat(ours).isCloseTo(hylandWexlerIce(celsius + 273.15), withPercentage(0.3));
            assertThat(ours).isCloseTo(sonntagIce(celsius + 273.15), withPercentage(0.3));
        }
    }

    /** The Magnus form (Sonntag), from memory: it drifts by 0.9 % at -80 degC over ice. */
    @Test
    void the_magnus_form_agrees_to_one_percent_over_ice_and_over_water() {
        for (double celsius = -80; celsius <= 0; celsius++) {
            assertThat(new DewPoint(celsius, Phase.ICE).vapourPascal())
                    .isCloseTo(611.2 * Math.exp(22.46 * celsius / (272.62 + celsius)), withPercentage(1));
        }
        for (double celsius = -45; celsius <= 50; celsius++) {
            assertThat(new DewPoint(celsius, Phase.WATER).vapourPascal())
                    .isCloseTo(611.2 * Math.exp(17.62 * celsius / (243.12 + celsius)), withPercentage(1));
        }
    }

    /** Steam tables, from memory: 2339 Pa at 20 degC, 3169 at 25 and 7384 at 40; 611.657 Pa at the triple point. */
    @Test
    void over_water_it_is_what_steam_tables_have() {
        assertThat(new DewPoint(20, Phase.WATER).vapourPascal()).isCloseTo(2339, withPercentage(0.1));
        assertThat(new DewPoint(25, Phase.WATER).vapourPascal()).isCloseTo(3169, withPercentage(0.1));
        assertThat(new DewPoint(40, Phase.WATER).vapourPascal()).isCloseTo(7384, withPercentage(0.1));
        assertThat(new DewPoint(0.01, Phase.WATER).vapourPascal()).isCloseTo(611.657, withPercentage(0.02));
        assertThat(new DewPoint(0.01, Phase.ICE).vapourPascal()).isCloseTo(611.657, withPercentage(0.02));
    }

    /** Check values that Murphy and Koop print with their equations (from memory), in Pa over ice and over water. */
    @ParameterizedTest
    @CsvSource({
        "150, 6.106e-6, 1.562e-5", "180, 0.0053975, 0.011239", "210, 0.70202, 1.2335", "240, 27.272, 37.667",
        "273.15, 611.154, 611.213",
    })
    void pressures_are_the_check_values_of_the_paper(double kelvin, double ice, double water) {
        assertThat(new DewPoint(kelvin - 273.15, Phase.ICE).vapourPascal()).isCloseTo(ice, withPercentage(0.02));
        assertThat(new DewPoint(kelvin - 273.15, Phase.WATER).vapourPascal()).isCloseTo(water, withPercentage(0.02));
    }

    /**
     * Supercooled water, computed from Hyland and Wexler: 188 ppm at -40, 63.6 at -50, 19.3 at -60 degC. Theirs was
     * carried down from above 0 degC, and Murphy and Koop lie 5 % below it at -60.
     */
    @ParameterizedTest
    @CsvSource({"-40, 188", "-50, 63.6", "-60, 19.3"})
    void the_phase_matters_by_half_and_more(double celsius, double ppm) {
        double water = new DewPoint(celsius, Phase.WATER).ppm(ATMOSPHERE);
        assertThat(water).isCloseTo(ppm, withPercentage(5));
        assertThat(water / new DewPoint(celsius, Phase.ICE).ppm(ATMOSPHERE)).isBetween(1.45, 1.85);
    }

    @Test
    void ppm_and_back_is_the_same_at_every_pressure() {
        for (double celsius = -145; celsius <= 55; celsius += 2.5) {
            DewPoint point = DewPoint.read(celsius);
            for (double bar : new double[] {0.1, ATMOSPHERE, 8}) {
                DewPoint back = DewPoint.ofPpm(point.ppm(bar), bar, point.phase());
                assertThat(back.celsius()).isCloseTo(celsius, within(2e-6));
            }
        }
        assertThat(DewPoint.ofPpm(10, ATMOSPHERE).phase()).isEqualTo(Phase.ICE);
        assertThat(DewPoint.ofPpm(10_000, ATMOSPHERE).phase()).isEqualTo(Phase.WATER);
    }

    @Test
    void what_has_no_dew_point_is_refused() {
        assertThatThrownBy(() -> new DewPoint(1, Phase.ICE)).hasMessageContaining("ICE");
        assertThatThrownBy(() -> new DewPoint(-151, Phase.WATER)).hasMessageContaining("WATER");
        assertThatThrownBy(() -> DewPoint.ofPpm(0, ATMOSPHERE)).hasMessageContaining("moisture");
        assertThatThrownBy(() -> DewPoint.ofPpm(10_000, ATMOSPHERE, Phase.ICE)).hasMessageContaining("moisture");
    }

    private static double hylandWexlerIce(double kelvin) {
        return Math.exp(-5674.5359 / kelvin + 6.3925247 - 9.677843e-3 * kelvin + 6.2215701e-7 * kelvin * kelvin
                + 2.0747825e-9 * Math.pow(kelvin, 3) - 9.484024e-13 * Math.pow(kelvin, 4)
                + 4.1635019 * Math.log(kelvin));
    }

    private static double sonntagIce(double kelvin) {
        return Math.exp(-6024.5282 / kelvin + 29.32707 + 1.0613868e-2 * kelvin - 1.3198825e-5 * kelvin * kelvin
                - 0.49382577 * Math.log(kelvin));
    }
}

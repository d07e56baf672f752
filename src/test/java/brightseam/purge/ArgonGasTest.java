package brightseam.purge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;

class ArgonGasTest {

    private static final double PSI_IN_BAR = 0.0689475729;
    private static final double KELVIN = 273.15;

    /** States that CoolProp's data file for argon gives for the same equation, liquid and near-critical ones too. */
    @Test
    void the_equation_gives_the_pressures_that_an_open_library_states_for_it() {
        assertThat(ArgonGas.bar(12.066686692700509, 165.7557)).isCloseTo(74.42485613080785, withPercentage(1e-8));
        assertThat(ArgonGas.bar(0.10149850850490478, 83.806)).isCloseTo(0.6889247707906286, withPercentage(1e-7));
        assertThat(ArgonGas.bar(35.46524383230812, 83.806)).isCloseTo(0.6889247707906286, withPercentage(1e-4));
        assertThat(ArgonGas.bar(13.40742965855612, 150.687)).isCloseTo(48.63, withPercentage(0.01));
    }

    /** NIST Chemistry WebBook, isotherm of argon at 300 K, as quoted in public notes of a laboratory. */
    @Test
    void densities_at_cylinder_pressure_are_those_of_the_nist_webbook() {
        double celsius = 300 - KELVIN;
        assertThat(ArgonGas.kilogramsPerCubicMetre(2250 * PSI_IN_BAR, celsius)).isCloseTo(261.88, within(0.05));
        assertThat(ArgonGas.kilogramsPerCubicMetre(2400 * PSI_IN_BAR, celsius)).isCloseTo(279.24, within(0.05));
        // An engineering handbook's table in the same notes, 1450 psia taken for 100 bar.
        assertThat(ArgonGas.kilogramsPerCubicMetre(1450 * PSI_IN_BAR, celsius)).isCloseTo(167.6, within(0.5));
    }

    /** Data sheets of gas suppliers at one atmosphere: 1.654 kg/m3 at 21.1 degC, which is ideal; 1.784 at 0 degC. */
    @Test
    void densities_at_one_atmosphere_are_those_of_data_sheets() {
        assertThat(ArgonGas.kilogramsPerCubicMetre(1.01325, 21.1)).isCloseTo(1.654, withPercentage(0.1));
        assertThat(ArgonGas.kilogramsPerCubicMetre(1.01325, 0)).isCloseTo(1.784, within(0.0005));
    }

    /** Second virial coefficient, from memory of tables (Dymond and Smith): -15.5 cm3/mol at 300 K, -21 at 273 K. */
    @Test
    void a_thin_gas_follows_the_second_virial_coefficient() {
        double second = (ArgonGas.compressibility(0.5, 300 - KELVIN) - 1) * 0.0831451 * 300 / 0.5 * 1000;
        double colder = (ArgonGas.compressibility(0.5, 0) - 1) * 0.0831451 * KELVIN / 0.5 * 1000;
        assertThat(second).isCloseTo(-15.5, within(0.5));
        assertThat(colder).isCloseTo(-21.2, within(0.6));
    }

    @Test
    void a_gas_without_pressure_is_ideal() {
        for (double celsius = -50; celsius <= 100; celsius += 10) {
            assertThat(ArgonGas.compressibility(1e-6, celsius)).isCloseTo(1, within(1e-8));
        }
    }

    /** NIST, from memory: Z 0.93 to 0.95 at 15 to 20 MPa and 21 degC. */
    @Test
    void full_cylinders_hold_some_six_percent_more_than_an_ideal_gas_would() {
        assertThat(ArgonGas.compressibility(150, 21)).isBetween(0.93, 0.95);
        assertThat(ArgonGas.compressibility(200, 21)).isBetween(0.93, 0.95);
    }

    @Test
    void density_grows_with_pressure_and_falls_with_temperature_and_gives_its_pressure_back() {
        for (double celsius = -100; celsius <= 190; celsius += 10) {
            double thinner = 0;
            for (double bar = 0.01; bar < 1000; bar *= 1.3) {
                double density = ArgonGas.molesPerLitre(bar, celsius);
                assertThat(density).isGreaterThan(thinner);
                assertThat(ArgonGas.molesPerLitre(bar, celsius + 10)).isLessThan(density);
                assertThat(ArgonGas.bar(density, celsius + KELVIN)).isCloseTo(bar, withPercentage(1e-8));
                thinner = density;
            }
        }
    }

    @Test
    void what_lies_outside_the_equation_is_refused() {
        assertThatThrownBy(() -> ArgonGas.molesPerLitre(0, 20)).hasMessageContaining("pressure");
        assertThatThrownBy(() -> ArgonGas.molesPerLitre(1001, 20)).hasMessageContaining("pressure");
        assertThatThrownBy(() -> ArgonGas.molesPerLitre(1, -120)).hasMessageContaining("temperature");
        assertThatThrownBy(() -> ArgonGas.molesPerLitre(Double.NaN, 20)).hasMessageContaining("pressure");
    }
}

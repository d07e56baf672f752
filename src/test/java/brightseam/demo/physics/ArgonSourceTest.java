package brightseam.demo.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ArgonSourceTest {

    /** Suppliers' tables, from memory: 10.7 m³ at 200 bar, 15.5 to 16 m³ at 300 bar, in 50 L at 15 °C. */
    @ParameterizedTest
    @CsvSource({"200, 10.7", "300, 15.6"})
    void a_cylinder_of_50_litres_holds_what_suppliers_print(double bar, double cubicMetres) {
        assertThat(new Cylinders(50, bar, 15).standardLitres() / 1_000)
                .isCloseTo(cubicMetres, Percentage.withPercentage(3));
    }

    /** NIST's tables, from memory: 0.93 to 0.95 between 15 and 20 MPa at 21 °C. */
    @ParameterizedTest
    @CsvSource({"150", "200"})
    void argon_is_denser_than_an_ideal_gas_by_what_tables_say(double bar) {
        assertThat(new Cylinders(50, bar, 21).compressibility()).isBetween(0.91, 0.96);
    }

    @Test
    void what_is_drawn_is_missing_and_the_pressure_falls() {
        Cylinders bundle = new Cylinders(12 * 50, 200, 20);
        double full = bundle.standardLitres();
        double before = bundle.gaugeBar();
        assertThat(before).isCloseTo(200, within(1e-6));
        for (int draught = 1; draught <= 12; draught++) {
            assertThat(bundle.draw(10_000)).isEqualTo(10_000);
            assertThat(bundle.standardLitres()).isCloseTo(full - draught * 10_000, within(1e-6));
            assertThat(bundle.gaugeBar()).isLessThan(before);
            before = bundle.gaugeBar();
        }
    }

    @Test
    void an_empty_cylinder_gives_no_more_and_stands_at_the_atmosphere() {
        Cylinders cylinder = new Cylinders(50, 8, 20);
        double left = cylinder.standardLitres();
        assertThat(cylinder.draw(left + 100)).isCloseTo(left, within(1e-6));
        assertThat(cylinder.draw(1)).isCloseTo(0, within(1e-6));
        assertThat(cylinder.gaugeBar()).isCloseTo(0, within(1e-6));
    }

    @Test
    void a_dewar_loses_liquid_to_the_draught_and_to_the_heat() {
        Dewar dewar = new Dewar(180, 80, 12, 0.016);
        dewar.draw(Dewar.EXPANSION * 18);
        assertThat(dewar.levelPercent()).isCloseTo(70, within(1e-9));
        dewar.stand(Duration.ofDays(10));
        assertThat(dewar.levelPercent()).isCloseTo(54, within(1e-9));
        assertThat(dewar.gaugeBar()).isEqualTo(12);
        dewar.draw(1e9);
        assertThat(dewar.levelPercent()).isZero();
        assertThat(dewar.gaugeBar()).isZero();
    }
}

package brightseam.bath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.Random;
import org.junit.jupiter.api.Test;

class EtchTest {

    private static final Density GRADE_9 = Density.ofGrade("9").orElseThrow();
    private static final Density STEEL = new Density(7.85, "the example's own");

    /**
     * K x W / (A x T x D) with K = 8.76e4 for mm a year and 3.45e6 for mil a year: ASTM G1 and G31, constants as
     * quoted by tutorials on corrosion rates; the standards themselves were not at hand.
     */
    @Test
    void the_rate_of_a_coupon_is_the_formula_of_astm_g1_and_g31() {
        Random random = new Random(17);
        for (int round = 0; round < 1000; round++) {
            double area = 1 + 100 * random.nextDouble();
            double loss = 5 * random.nextDouble();
            int hours = 1 + random.nextInt(1000);
            EtchRate rate = new CouponLoss(100, 100 - loss, area, GRADE_9).rate(Duration.ofHours(hours));
            double byFormula = (100 - (100 - loss)) / (area * hours * 4.48);
            assertThat(rate.millimetresPerYear()).isCloseTo(8.76e4 * byFormula, within(1e-6));
            assertThat(rate.milPerYear()).isCloseTo(3.45e6 * byFormula, within(3.45e6 * byFormula * 5e-4));
        }
    }

    /** A published example of ASTM G1: 0.650 g from 28.5 cm2 of steel in 168 h; printed steps 56 940 / 37 585.8. */
    @Test
    void a_published_coupon_of_steel_gives_its_rate() {
        EtchRate rate = new CouponLoss(25.500, 24.850, 28.5, STEEL).rate(Duration.ofHours(168));
        assertThat(rate.millimetresPerYear()).isCloseTo(56_940 / 37_585.8, within(1e-4));
    }

    /** A published answer: 485 g from 100 square inches of 7.9 g/cm3 in a year is 37.4 mil/y and 0.952 mm/y. */
    @Test
    void a_published_plate_of_steel_gives_its_rate_in_both_units() {
        Density steel = new Density(7.9, "the example's own");
        EtchRate rate = new CouponLoss(10_000, 9515, 100 * 2.54 * 2.54, steel).rate(Duration.ofHours(8760));
        assertThat(rate.millimetresPerYear()).isCloseTo(0.952, within(0.0005));
        assertThat(rate.milPerYear()).isCloseTo(37.4, within(0.1));
    }

    /** A published answer: 0.3 mil/y on one face of 4 in by 4 in of copper (8.96) in 18 days is 34.75 mg. */
    @Test
    void a_published_plate_of_copper_loses_its_mass() {
        EtchRate rate = new EtchRate(0.3 * 25.4 / (8760 * 60));
        Density copper = new Density(8.96, "the example's own");
        double grams = rate.in(Duration.ofDays(18)).massGrams(16 * 2.54 * 2.54 / 1e4, copper);
        assertThat(1000 * grams).isCloseTo(34.75, within(0.05));
    }

    /** An aerospace shop's bath runs at 0.003 in/h and is allowed 0.0025 to 0.005 in/h: 0.042 to 0.083 mil/min. */
    @Test
    void inches_an_hour_and_mil_a_minute_agree() {
        assertThat(EtchRate.ofInchesPerHour(0.0025).milPerMinute()).isCloseTo(0.042, within(0.0005));
        assertThat(EtchRate.ofInchesPerHour(0.005).milPerMinute()).isCloseTo(0.083, within(0.0005));
        assertThat(EtchRate.ofInchesPerHour(0.003).micrometresPerMinute()).isCloseTo(1.27, within(1e-9));
        assertThat(EtchRate.ofMilPerMinute(0.05).inchesPerHour()).isCloseTo(0.003, within(1e-12));
    }

    @Test
    void removal_and_mass_are_each_others_inverse() {
        Random random = new Random(19);
        for (int round = 0; round < 1000; round++) {
            double squareMetres = 0.001 + random.nextDouble();
            Removal removal = new Removal(100 * random.nextDouble());
            double grams = removal.massGrams(squareMetres, GRADE_9);
            Removal back = new CouponLoss(grams + 1, 1, 1e4 * squareMetres, GRADE_9).removal();
            assertThat(back.micrometres()).isCloseTo(removal.micrometres(), within(1e-6));
        }
        assertThat(Removal.ofMil(1).micrometres()).isEqualTo(25.4);
        assertThat(new Removal(25.4).mil()).isEqualTo(1);
    }

    @Test
    void an_estimate_follows_acid_and_temperature_and_says_where_it_is_from() {
        RateLaw.Reference measured = new RateLaw.Reference(new EtchRate(2), 20, 30);
        RateLaw.Estimate estimate = RateLaw.FROM_MEMORY.estimate(measured, 10, 20);
        assertThat(estimate.rate().micrometresPerMinute()).isCloseTo(0.5, within(1e-12));
        assertThat(RateLaw.FROM_MEMORY.estimate(measured, 20, 30).rate()).isEqualTo(measured.rate());
        assertThat(RateLaw.FROM_MEMORY.estimate(measured, 0, 30).rate().micrometresPerMinute()).isZero();
        assertThat(estimate.source()).contains("from memory");
        assertThat(estimate.workings()).extracting(Working::number).containsExactly(0.5, 0.5, 0.5);
    }

    @Test
    void weighings_and_baths_that_cannot_be_are_refused() {
        assertThatThrownBy(() -> new CouponLoss(10, 10.1, 5, GRADE_9)).hasMessageContaining("loses mass");
        assertThatThrownBy(() -> new CouponLoss(10, 9, 0, GRADE_9)).hasMessageContaining("area");
        assertThatThrownBy(() -> new CouponLoss(Double.NaN, 9, 5, GRADE_9)).hasMessageContaining("mass before");
        assertThatThrownBy(() -> EtchRate.of(new Removal(1), Duration.ZERO)).hasMessageContaining("soak");
        assertThatThrownBy(() -> new EtchRate(-1)).hasMessageContaining("etch rate");
        assertThatThrownBy(() -> new RateLaw.Reference(new EtchRate(1), 0, 20)).hasMessageContaining("free HF");
        assertThatThrownBy(() -> new RateLaw(0, "")).hasMessageContaining("half");
    }
}

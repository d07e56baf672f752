package brightseam.chamber;

import static brightseam.chamber.Gear.at;
import static brightseam.chamber.Gear.bundle;
import static brightseam.chamber.Gear.decimal;
import static brightseam.chamber.Gear.dewar;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brightseam.kernel.Moment;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ArgonLeftTest {

    private static final Manifold MANIFOLD = Gear.terms().manifold();

    private static ArgonLeft left(ArgonSource source, Moment now) {
        return ArgonLeft.of(source, MANIFOLD, true, now).orElseThrow();
    }

    /** Suppliers' tables state some 10.7 m3 for 50 L at 200 bar (from memory): twelve of them, within 2 %. */
    @Test
    void a_bundle_holds_what_suppliers_state() {
        assertThat(left(bundle("200"), at(0)).totalStandardLitres()).isCloseTo(12 * 10_700, within(2_600.0));
        assertThat(ArgonLeft.full(bundle("1").vessel()).orElseThrow())
                .isCloseTo(left(bundle("200"), at(0)).totalStandardLitres(), within(1e-6));
    }

    @Test
    void the_rest_is_not_left() {
        ArgonLeft at5 = left(bundle("5"), at(0));
        assertThat(at5.usableStandardLitres()).isZero();
        ArgonLeft at200 = left(bundle("200"), at(0));
        assertThat(at200.usableStandardLitres())
                .isCloseTo(at200.totalStandardLitres() - at5.totalStandardLitres(), within(1e-6));
        assertThat(left(bundle("3"), at(0)).usableStandardLitres()).isZero();
    }

    /** 1000 psi, where some fabricators retire a cylinder (AWS G2.4:2014, clause 8). */
    @Test
    void a_pressure_at_which_cylinders_are_retired_ends_them_sooner() {
        Manifold retiring = new Manifold(2, decimal("5"), Optional.of(decimal("69")), decimal("5"), "AWS G2.4");
        assertThat(ArgonLeft.of(bundle("69"), retiring, true, at(0)).orElseThrow().usableStandardLitres()).isZero();
        assertThat(ArgonLeft.of(bundle("70"), retiring, true, at(0)).orElseThrow().usableStandardLitres())
                .isPositive();
    }

    /** Liquid at 1.394 kg/L becomes gas of 1.69 kg/m3 at 15 °C: 825 litres a litre. */
    @Test
    void a_dewar_holds_its_level_less_its_boil_off() {
        ArgonLeft full = left(dewar("100"), at(0));
        assertThat(full.totalStandardLitres()).isCloseTo(180 * 825, within(300.0));
        ArgonLeft later = left(dewar("100"), at(36 * 3600));
        assertThat(later.totalStandardLitres()).isCloseTo(0.97 * full.totalStandardLitres(), within(1.0));
        assertThat(later.boilOffStandardLitresPerHour()).isCloseTo(full.totalStandardLitres() * 0.02 / 24, within(0.1));
    }

    @Test
    void the_share_of_a_full_one_goes_from_nothing_to_one() {
        assertThat(left(bundle("200"), at(0)).share(bundle("200").vessel(), MANIFOLD).orElseThrow())
                .isCloseTo(1, within(1e-6));
        assertThat(left(bundle("5"), at(0)).share(bundle("5").vessel(), MANIFOLD)).contains(0.0);
        assertThat(left(dewar("50"), at(0)).share(dewar("50").vessel(), MANIFOLD).orElseThrow())
                .isCloseTo(45.0 / 95, within(1e-6));
    }

    @Test
    void what_was_never_read_is_not_known() {
        ArgonSource unread = new ArgonSource(Gear.BUNDLE, bundle("1").vessel(), Gear.PURE, Optional.empty(),
                Optional.empty(), ArgonSource.Standing.IN_USE);
        assertThat(ArgonLeft.of(unread, MANIFOLD, true, at(0))).isEmpty();
    }
}

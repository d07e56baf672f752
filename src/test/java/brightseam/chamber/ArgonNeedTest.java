package brightseam.chamber;

import static brightseam.chamber.Gear.PURE;
import static brightseam.chamber.Gear.chamber;
import static brightseam.chamber.Gear.decimal;
import static brightseam.chamber.Gear.leaking;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class ArgonNeedTest {

    /** Ideal gas from 20 to 15 °C; the real gas differs by less than 0.01 % of it at one atmosphere. */
    private static final double TO_STANDARD = 288.15 / 293.15;

    private static ArgonNeed.Needed needed(Chamber chamber, Duration fit, int passes) {
        return (ArgonNeed.Needed) ArgonNeed.of(chamber, PURE, fit, passes);
    }

    private static Chamber with(LockMethod method) {
        ChamberTerms terms = Gear.terms();
        LockGear lock = new LockGear(Gear.LOCK, decimal("40"), method, Gear.limit("100"));
        return new Chamber(Gear.CHAMBER, new ChamberTerms(terms.volumeLitres(), terms.glovePortLitres(), lock,
                terms.flows(), terms.limits(), terms.manifold(), terms.usual(), terms.permittedMaterials()),
                java.util.List.of(), Optional.empty(), new TreeSet<>());
    }

    /** Sweep-through formula of Crowl and Louvar, chapter 7 (from memory): 8.920 volumes to 30 ppm with 2 ppm gas. */
    @Test
    void the_purge_takes_the_volumes_of_the_sweep_through_formula() {
        ArgonNeed.Needed need = needed(chamber(), Duration.ofHours(3), 0);
        assertThat(need.purgeStandardLitres()).isCloseTo(8.920 * 824 * TO_STANDARD, within(2.0));
        assertThat(need.purge().toMillis()).isCloseTo(Math.round(8.920 * 824 / 60 * 60_000), within(2_000L));
    }

    @Test
    void holding_takes_flow_times_hours() {
        ArgonNeed.Needed need = needed(chamber(), Duration.ofHours(3), 0);
        assertThat(need.holdStandardLitres()).isCloseTo(8 * 180 * TO_STANDARD, within(0.5));
        assertThat(need.oncePurged(Duration.ofMinutes(45)).standardLitres())
                .isCloseTo(8 * 45 * TO_STANDARD, within(0.2));
    }

    /**
     * Vacuum cycles of Crowl and Louvar (from memory): from 209460 to 100 ppm with 2 ppm gas at 0.1 to 1.01325 bar
     * takes ln(98 / 209458) / ln(0.1 / 1.01325) = 3.31, so 4 cycles of 0.9 of the lock's volume.
     */
    @Test
    void a_lock_by_cycles_takes_whole_cycles() {
        double one = needed(chamber(), Duration.ofHours(3), 1).lockStandardLitres();
        assertThat(one).isCloseTo(4 * 40 * (1.01325 - 0.1) / 1.01325 * TO_STANDARD, within(0.5));
        assertThat(needed(chamber(), Duration.ofHours(3), 3).lockStandardLitres()).isCloseTo(3 * one, within(1e-6));
    }

    @Test
    void a_lock_by_sweep_takes_at_least_its_least_time() {
        double least = needed(with(LockMethod.sweep(Duration.ofMinutes(30))), Duration.ofHours(3), 1)
                .lockStandardLitres();
        double formula = needed(with(LockMethod.sweep(Duration.ofMinutes(1))), Duration.ofHours(3), 1)
                .lockStandardLitres();
        assertThat(least).isCloseTo(30 * 20 * TO_STANDARD, within(0.5));
        assertThat(formula).isCloseTo(40 * Math.log(209458.0 / 98) * TO_STANDARD, within(0.5));
    }

    @Test
    void a_leak_makes_it_longer_and_then_impossible() {
        double tight = needed(chamber(), Duration.ofHours(3), 0).purgeStandardLitres();
        double leaky = needed(leaking(chamber(), "0.005"), Duration.ofHours(3), 0).purgeStandardLitres();
        assertThat(leaky).isGreaterThan(tight);
        assertThat(ArgonNeed.of(leaking(chamber(), "0.01"), PURE, Duration.ofHours(3), 0))
                .isInstanceOfSatisfying(ArgonNeed.Impossible.class, never -> {
                    assertThat(never.what()).isEqualTo(ArgonNeed.What.CHAMBER_OXYGEN);
                    assertThat(never.levelPpm()).isCloseTo((60 * 2 + 0.01 * 209460) / 60.01, within(1e-6));
                });
    }

    @Test
    void gas_that_is_worse_than_a_limit_never_gets_there() {
        assertThat(((ArgonNeed.Impossible) ArgonNeed.of(chamber(), new ArgonPurity(decimal("2"), decimal("40"), "C"),
                Duration.ofHours(1), 0)).what()).isEqualTo(ArgonNeed.What.CHAMBER_MOISTURE);
    }
}

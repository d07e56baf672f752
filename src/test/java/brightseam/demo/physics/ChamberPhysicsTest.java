package brightseam.demo.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChamberPhysicsTest {

    private static final double AIR = Gas.OXYGEN.outdoorsPpm();
    private static final double LITRES = 1_000;
    private static final double FLOW = 100;
    private static final Percentage EXACTLY = Percentage.withPercentage(1e-8);

    /** Volumes to a target from 20.946 %, worked out from the formula of sweep-through purging with a calculator. */
    @ParameterizedTest
    @CsvSource({"500, 0, 6.038", "50, 0, 8.340", "30, 0, 8.851", "50, 2, 8.381", "30, 5, 9.033", "5, 2, 11.154"})
    void sweeping_reaches_a_limit_after_the_volumes_of_the_formula(double limit, double argon, double volumes) {
        ChamberPhysics physics = ideal();
        physics.advance(Conditions.still().purging(FLOW).argon(argon, 0), minutes(volumes * LITRES / FLOW));
        assertThat(physics.ppm(Gas.OXYGEN, Space.CHAMBER)).isCloseTo(limit, Percentage.withPercentage(0.3));
    }

    @Test
    void a_leak_leaves_the_oxygen_at_its_share_of_the_flow() {
        ChamberPhysics physics = ideal();
        double leak = 0.02;
        physics.advance(Conditions.still().purging(FLOW).argon(2, 0).leaking(leak, 0), Duration.ofHours(12));
        double room = physics.ppm(Gas.OXYGEN, Space.ROOM);
        assertThat(physics.ppm(Gas.OXYGEN, Space.CHAMBER))
                .isCloseTo((2 * FLOW + leak * room) / (FLOW + leak), Percentage.withPercentage(1e-4))
                .isBetween(43.0, 44.0);
    }

    @Test
    void gas_that_goes_straight_out_makes_the_purge_slower_by_its_share() {
        ChamberBody half = new ChamberBody(LITRES, 85, 1, 1e12, 0, 100, 400, 4_000, 0.5, 0, 0,
                Duration.ofMinutes(1), Duration.ofMinutes(1), 0, 0);
        ChamberPhysics mixed = new ChamberPhysics(half, List.of());
        mixed.advance(Conditions.still().purging(FLOW), Duration.ofMinutes(40));
        assertThat(mixed.ppm(Gas.OXYGEN, Space.CHAMBER)).isCloseTo(AIR * Math.exp(-0.5 * 40 * FLOW / LITRES), EXACTLY);
    }

    @Test
    void one_long_step_and_many_short_ones_come_to_the_same() {
        Conditions busy = Conditions.still().purging(120).purgingLock(40).argon(2, 3).leaking(0.01, 0.02)
                .doors(false, false, true).arc(true).ventilated(5_000);
        ChamberPhysics once = demo();
        ChamberPhysics often = demo();
        once.advance(busy, Duration.ofHours(3));
        for (int second = 0; second < 3 * 3_600; second++) {
            often.advance(busy, Duration.ofSeconds(1));
        }
        for (Gas gas : Gas.values()) {
            for (Space space : Space.values()) {
                assertThat(once.ppm(gas, space)).isCloseTo(often.ppm(gas, space), EXACTLY);
            }
        }
        assertThat(once.followed(0)).isCloseTo(often.followed(0), EXACTLY);
    }

    @Test
    void plain_steps_of_the_balance_lead_to_the_same_place() {
        Conditions purge = Conditions.still().purging(120).argon(2, 3).leaking(0.01, 0);
        ChamberPhysics physics = new ChamberPhysics(ChamberBody.demo(), List.of());
        physics.advance(purge, Duration.ofMinutes(60));
        double[] plain = euler(ChamberBody.demo(), purge, Duration.ofMinutes(60));
        assertThat(physics.ppm(Gas.OXYGEN, Space.CHAMBER)).isCloseTo(plain[0], Percentage.withPercentage(0.01));
        assertThat(physics.ppm(Gas.OXYGEN, Space.SLEEVES)).isCloseTo(plain[1], Percentage.withPercentage(0.01));
    }

    @Test
    void shut_volumes_with_the_inner_door_open_mix_and_lose_nothing() {
        ChamberPhysics physics = ideal();
        physics.put(Gas.OXYGEN, Space.CHAMBER, 10);
        physics.put(Gas.OXYGEN, Space.SLEEVES, 10);
        physics.put(Gas.OXYGEN, Space.LOCK, 500);
        for (int minute = 0; minute < 60; minute++) {
            physics.advance(Conditions.still().doors(false, false, true), Duration.ofMinutes(1));
            assertThat(LITRES * physics.ppm(Gas.OXYGEN, Space.CHAMBER) + 85 * physics.ppm(Gas.OXYGEN, Space.LOCK))
                    .isCloseTo(LITRES * 10 + 85 * 500, EXACTLY);
        }
        assertThat(physics.ppm(Gas.OXYGEN, Space.CHAMBER))
                .isCloseTo((LITRES * 10 + 85 * 500) / (LITRES + 85), Percentage.withPercentage(0.01));
    }

    @Test
    void the_outer_door_fills_the_lock_with_air_and_leaves_the_chamber_alone() {
        ChamberPhysics physics = ideal();
        physics.put(Gas.OXYGEN, Space.CHAMBER, 10);
        physics.put(Gas.OXYGEN, Space.LOCK, 10);
        physics.advance(Conditions.still().doors(false, true, false), Duration.ofMinutes(5));
        assertThat(physics.ppm(Gas.OXYGEN, Space.LOCK)).isCloseTo(AIR, within(1.0));
        assertThat(physics.ppm(Gas.OXYGEN, Space.CHAMBER)).isEqualTo(10);
    }

    @Test
    void damp_walls_give_off_their_water_with_their_own_time() {
        double store = 60_000;
        ChamberPhysics physics = new ChamberPhysics(new ChamberBody(LITRES, 85, 1, 1e12, 0, 100, 400, 4_000, 1, store,
                0, Duration.ofMinutes(20), Duration.ofMinutes(5), 0, 0), List.of());
        physics.put(Gas.MOISTURE, Space.CHAMBER, 0);
        physics.advance(Conditions.still().purging(FLOW), Duration.ofMinutes(15));
        double flush = FLOW / LITRES;
        double dry = 1 / 20.0;
        assertThat(physics.ppm(Gas.MOISTURE, Space.CHAMBER)).isCloseTo(
                dry * store / LITRES / (flush - dry) * (Math.exp(-dry * 15) - Math.exp(-flush * 15)), EXACTLY);
    }

    @Test
    void walls_that_stand_open_get_wet_again_and_hold_no_more_than_they_can() {
        ChamberPhysics soaked = demo();
        soaked.wet(0);
        soaked.advance(Conditions.still().doors(true, false, false), Duration.ofHours(2));
        soaked.put(Gas.MOISTURE, Space.CHAMBER, 0);
        ChamberPhysics full = demo();
        full.put(Gas.MOISTURE, Space.CHAMBER, 0);
        soaked.advance(Conditions.still().purging(FLOW), Duration.ofMinutes(10));
        full.advance(Conditions.still().purging(FLOW), Duration.ofMinutes(10));
        assertThat(soaked.ppm(Gas.MOISTURE, Space.CHAMBER))
                .isCloseTo(full.ppm(Gas.MOISTURE, Space.CHAMBER), Percentage.withPercentage(1));
    }

    @Test
    void an_arc_drives_oxygen_out_and_a_puff_lets_air_in() {
        ChamberPhysics physics = demo();
        physics.put(Gas.OXYGEN, Space.CHAMBER, 10);
        physics.put(Gas.OXYGEN, Space.SLEEVES, 10);
        physics.advance(Conditions.still().arc(true), Duration.ofMinutes(10));
        double driven = ChamberBody.demo().arcOxygen() * 10 / (1_150 + 18);
        assertThat(physics.ppm(Gas.OXYGEN, Space.CHAMBER)).isCloseTo(10 + driven, within(0.05));
        double before = physics.ppm(Gas.OXYGEN, Space.CHAMBER);
        physics.puff(0.5);
        assertThat(physics.ppm(Gas.OXYGEN, Space.CHAMBER))
                .isCloseTo(before + 0.5 / 1_150 * (AIR - before), EXACTLY);
    }

    @Test
    void argon_that_is_vented_thins_the_air_of_the_room_and_ventilation_brings_it_back() {
        ChamberPhysics physics = new ChamberPhysics(ChamberBody.demo(), List.of());
        physics.advance(Conditions.still().purging(120), Duration.ofHours(4));
        assertThat(physics.ppm(Gas.OXYGEN, Space.ROOM)).isLessThan(180_000);
        physics.advance(Conditions.still().ventilated(5_000), Duration.ofHours(4));
        assertThat(physics.ppm(Gas.OXYGEN, Space.ROOM)).isCloseTo(AIR, within(100.0));
    }

    @Test
    void a_gauge_follows_a_step_with_its_lag() {
        Tap slow = new Tap(Gas.OXYGEN, Space.CHAMBER, Duration.ofSeconds(30));
        Tap quick = new Tap(Gas.OXYGEN, Space.CHAMBER, Duration.ZERO);
        ChamberPhysics physics = new ChamberPhysics(ChamberBody.ideal(LITRES, 85), List.of(slow, quick));
        physics.put(Gas.OXYGEN, Space.CHAMBER, 0);
        physics.puff(100);
        physics.advance(Conditions.still(), Duration.ofSeconds(45));
        double truth = physics.ppm(Gas.OXYGEN, Space.CHAMBER);
        assertThat(physics.followed(0)).isCloseTo(truth * (1 - Math.exp(-1.5)), Percentage.withPercentage(0.001));
        assertThat(physics.followed(1)).isEqualTo(truth);
    }

    @Test
    void the_demo_s_chamber_becomes_fit_in_a_morning_and_stays_so_at_the_holding_flow() {
        ChamberPhysics physics = demo();
        Conditions shut = Conditions.still().argon(1.5, 3).leaking(0.0008, 0.001).ventilated(5_000);
        physics.advance(shut.purging(120), Duration.ofMinutes(105));
        assertThat(physics.ppm(Gas.OXYGEN, Space.CHAMBER)).isLessThan(30);
        physics.advance(shut.purging(30), Duration.ofHours(2));
        assertThat(physics.ppm(Gas.OXYGEN, Space.CHAMBER)).isBetween(5.0, 15.0);
        assertThat(physics.ppm(Gas.MOISTURE, Space.CHAMBER)).isLessThan(50);
    }

    private static ChamberPhysics ideal() {
        return new ChamberPhysics(ChamberBody.ideal(LITRES, 85), List.of());
    }

    private static ChamberPhysics demo() {
        return new ChamberPhysics(ChamberBody.demo(),
                List.of(new Tap(Gas.OXYGEN, Space.CHAMBER, Duration.ofSeconds(6))));
    }

    private static Duration minutes(double minutes) {
        return Duration.ofMillis(Math.round(minutes * 60_000));
    }

    /** Oxygen of chamber and sleeves by the plainest of all methods, in steps of a hundredth of a second. */
    private static double[] euler(ChamberBody body, Conditions now, Duration time) {
        double chamber = AIR;
        double sleeves = AIR;
        double room = AIR;
        double step = 0.01 / 60;
        for (long i = 0; i < time.toMillis() / 10; i++) {
            double purge = now.purgeLitresPerMinute();
            double mixed = body.mixing() * purge;
            double leak = now.leakLitresPerMinute();
            double breath = body.sleeveLitresPerMinute();
            double toChamber = mixed * (now.argonOxygenPpm() - chamber) + leak * (room - chamber)
                    + breath * (sleeves - chamber);
            double toRoom = (mixed + leak) * (chamber - room) + (purge - mixed) * (now.argonOxygenPpm() - room);
            sleeves += step * breath * (chamber - sleeves) / body.sleeveLitres();
            room += step * toRoom / body.roomLitres();
            chamber += step * toChamber / body.chamberLitres();
        }
        return new double[] {chamber, sleeves};
    }
}

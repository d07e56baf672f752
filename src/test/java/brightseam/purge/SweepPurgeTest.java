package brightseam.purge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import brightseam.purge.SweepPurge.Impossible;
import brightseam.purge.SweepPurge.Needed;
import brightseam.purge.SweepPurge.Obstacle;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SweepPurgeTest {

    private static final double AIR = RoomAir.OXYGEN_PPM;

    @Test
    void time_volumes_and_gas_belong_together() {
        MixingModel model = new MixingModel(400, 50, 2, 0.8, 0.005);
        Needed needed = (Needed) model.sweep(AIR, 40);
        assertThat(needed.gasLitres()).isCloseTo(needed.minutes() * 50, within(1e-9));
        assertThat(needed.volumes()).isCloseTo(needed.gasLitres() / 400, within(1e-9));
        assertThat(model.ppmAfter(needed.minutes(), AIR)).isCloseTo(40, within(1e-6));
        assertThat(needed.argonStandardLitres(1.01325, 15)).isCloseTo(needed.gasLitres(), within(1e-6));
        assertThat(needed.argonStandardLitres(1.01325, 25)).isCloseTo(needed.gasLitres() * 288.15 / 298.15, within(1.));
    }

    @Test
    void a_limit_at_or_below_the_supply_is_impossible_and_the_supply_is_named() {
        assertThat(new MixingModel(400, 50, 5, 1, 0).sweep(AIR, 5))
                .isEqualTo(new Impossible(5, 5, Set.of(Obstacle.SUPPLY)));
        assertThat(new MixingModel(400, 50, 5, 1, 0).sweep(AIR, 4))
                .isInstanceOfSatisfying(Impossible.class, no -> assertThat(no.against()).containsOnly(Obstacle.SUPPLY));
        assertThat(new MixingModel(400, 50, 5, 1, 0).sweep(AIR, 5.001)).isInstanceOf(Needed.class);
    }

    @Test
    void a_limit_at_or_below_the_level_of_a_leak_is_impossible_and_the_leak_is_named() {
        MixingModel leaking = new MixingModel(400, 50, 2, 1, 0.01);
        double level = (50 * 2 + 0.01 * AIR) / 50.01;
        assertThat(leaking.levelPpm()).isCloseTo(level, within(1e-9));
        assertThat(leaking.sweep(AIR, leaking.levelPpm()))
                .isInstanceOfSatisfying(Impossible.class, no -> assertThat(no.against()).containsOnly(Obstacle.LEAK));
        assertThat(leaking.sweep(AIR, level + 0.01)).isInstanceOf(Needed.class);
    }

    @Test
    void without_a_flow_nothing_gets_better() {
        assertThat(new MixingModel(400, 0, 2, 1, 0.01).sweep(900, 40))
                .isEqualTo(new Impossible(40, AIR, Set.of(Obstacle.NO_FLOW)));
        assertThat(new MixingModel(400, 0, 2, 1, 0).sweep(900, 40))
                .isEqualTo(new Impossible(40, 900, Set.of(Obstacle.NO_FLOW)));
        assertThat(new MixingModel(400, 50, 2, 0, 0).sweep(900, 40)).isInstanceOf(Impossible.class);
        assertThat(new MixingModel(400, 0, 2, 1, 0).sweep(30, 40)).isEqualTo(new Needed(0, 0, 0));
    }

    @Test
    void a_vessel_below_the_limit_that_would_rise_above_it_is_told() {
        MixingModel leaking = new MixingModel(400, 50, 2, 1, 0.02);
        assertThat(leaking.sweep(20, 40)).isInstanceOf(Impossible.class);
        assertThat(leaking.sweep(20, 100)).isEqualTo(new Needed(0, 0, 0));
    }

    @Test
    void more_flow_is_never_later_and_purer_gas_never_later_and_a_larger_leak_never_sooner() {
        Random random = new Random(20_946);
        for (int i = 0; i < 5000; i++) {
            double flow = 5 + 100 * random.nextDouble();
            double supply = 10 * random.nextDouble();
            double leak = random.nextBoolean() ? 0 : 0.02 * random.nextDouble();
            double efficiency = 0.3 + 0.7 * random.nextDouble();
            double limit = 5 + 200 * random.nextDouble();
            double minutes = minutes(flow, supply, efficiency, leak, limit);
            double more = random.nextDouble();
            assertThat(minutes(flow * (1 + more), supply, efficiency, leak, limit)).isLessThanOrEqualTo(minutes);
            assertThat(minutes(flow, supply * more, efficiency, leak, limit)).isLessThanOrEqualTo(minutes);
            assertThat(minutes(flow, supply, efficiency, leak + 0.01 * more, limit)).isGreaterThanOrEqualTo(minutes);
            assertThat(minutes(flow, supply, efficiency * more, leak, limit)).isGreaterThanOrEqualTo(minutes);
            assertThat(minutes(flow, supply, efficiency, leak, limit * (1 + more))).isLessThanOrEqualTo(minutes);
        }
    }

    @Test
    void moisture_follows_the_same_model_with_the_rooms_own_water() {
        MixingModel oxygen = new MixingModel(400, 50, 2, 0.9, 0.01);
        MixingModel moisture = oxygen.forMoisture(3, RoomAir.WORKSHOP);
        assertThat(moisture.ratePerMinute()).isEqualTo(oxygen.ratePerMinute());
        // 20 degC, 50 %: 23.4 hPa over water (handbook value, from memory) times one half, in 1013.25 hPa.
        assertThat(RoomAir.WORKSHOP.moisturePpm()).isCloseTo(11_540, within(30.));
        assertThat(RoomAir.WORKSHOP.oxygenPpm()).isCloseTo(AIR * (1 - 0.01154), within(10.));
        double share = (oxygen.levelPpm() - 2) / AIR;
        assertThat(moisture.levelPpm() - 3).isCloseTo(share * RoomAir.WORKSHOP.moisturePpm(), within(0.01));
    }

    @Test
    void what_cannot_be_is_refused_when_it_is_made() {
        assertThatThrownBy(() -> new MixingModel(0, 50, 2, 1, 0)).hasMessageContaining("volume");
        assertThatThrownBy(() -> new MixingModel(400, -1, 2, 1, 0)).hasMessageContaining("flow");
        assertThatThrownBy(() -> new MixingModel(400, 50, Double.NaN, 1, 0)).hasMessageContaining("supply");
        assertThatThrownBy(() -> new MixingModel(400, 50, 2, 6, 0)).hasMessageContaining("efficiency");
        assertThatThrownBy(() -> new MixingModel(400, 50, 2, 1, -0.1)).hasMessageContaining("leak");
    }

    private static double minutes(double flow, double supply, double efficiency, double leak, double limit) {
        return switch (new MixingModel(400, flow, supply, efficiency, leak).sweep(AIR, limit)) {
            case Needed needed -> needed.minutes();
            case Impossible impossible -> Double.POSITIVE_INFINITY;
        };
    }
}

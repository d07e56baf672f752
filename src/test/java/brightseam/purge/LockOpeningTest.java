package brightseam.purge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class LockOpeningTest {

    @Test
    void a_door_that_stays_open_makes_one_mixture() {
        LockOpening.Mixed mixed = new LockOpening(400, 40, 1).after(20, 500);
        assertThat(mixed.chamberPpm()).isCloseTo((400 * 20 + 40 * 500) / 440.0, within(1e-9));
        assertThat(mixed.lockPpm()).isCloseTo(mixed.chamberPpm(), within(1e-9));
    }

    @Test
    void no_gas_is_lost_through_the_door_and_more_exchange_is_never_better() {
        Random random = new Random(40);
        for (int i = 0; i < 2000; i++) {
            double chamber = 50 + 1000 * random.nextDouble();
            double lock = 5 + 200 * random.nextDouble();
            double exchange = random.nextDouble();
            double chamberPpm = 100 * random.nextDouble();
            double lockPpm = chamberPpm + 2000 * random.nextDouble();
            LockOpening.Mixed mixed = new LockOpening(chamber, lock, exchange).after(chamberPpm, lockPpm);
            assertThat(chamber * mixed.chamberPpm() + lock * mixed.lockPpm())
                    .isCloseTo(chamber * chamberPpm + lock * lockPpm, within(1e-6));
            assertThat(mixed.chamberPpm()).isGreaterThanOrEqualTo(chamberPpm).isLessThanOrEqualTo(lockPpm);
            double wider = exchange + (1 - exchange) * random.nextDouble();
            assertThat(new LockOpening(chamber, lock, wider).after(chamberPpm, lockPpm).chamberPpm())
                    .isGreaterThanOrEqualTo(mixed.chamberPpm() - 1e-9);
        }
    }

    @Test
    void the_way_back_is_a_sweep_from_the_mixture() {
        MixingModel chamber = new MixingModel(400, 50, 2, 0.9, 0);
        LockOpening.Effect effect = new LockOpening(400, 40, 0.5).effect(chamber, 20, 5000, 40);
        double after = effect.mixed().chamberPpm();
        assertThat(after).isGreaterThan(40);
        assertThat(effect.back()).isEqualTo(chamber.sweep(after, 40));
        assertThat(((SweepPurge.Needed) effect.back()).minutes()).isCloseTo(
                Math.log((after - 2) / 38) * 400 / 45, within(1e-9));
    }

    @Test
    void a_lock_as_clean_as_is_said_keeps_the_chamber_at_its_limit() {
        LockOpening opening = new LockOpening(400, 40, 0.7);
        double most = opening.lockPpmMax(20, 40);
        assertThat(opening.after(20, most).chamberPpm()).isCloseTo(40, within(1e-9));
        assertThat(new LockOpening(400, 40, 0).lockPpmMax(20, 40)).isEqualTo(1e6);
        assertThat(new LockOpening(400, 40, 0).lockPpmMax(50, 40)).isNegative();
        assertThat(opening.lockPpmMax(4000, 40)).isNegative();
    }

    @Test
    void two_volumes_for_one_chamber_are_refused() {
        assertThatThrownBy(() -> new LockOpening(400, 40, 1).effect(new MixingModel(500, 50, 2, 1, 0), 20, 50, 40))
                .hasMessageContaining("two volumes");
    }
}

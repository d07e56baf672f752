package brightseam.bath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import brightseam.bath.MakeUp.Additions;
import brightseam.bath.MakeUp.Now;
import java.util.Random;
import org.junit.jupiter.api.Test;

class MakeUpTest {

    private static final Stocks STOCKS = new Stocks(StockAcid.NITRIC_70, StockAcid.HYDROFLUORIC_48);

    @Test
    void an_empty_tank_takes_what_the_recipe_says() {
        assertThat(MakeUp.plan(new Now(0, new VolumeStrength(0, 0)), new VolumeStrength(35, 5), 200, false))
                .isEqualTo(new Additions(0, 70, 10, 120, 200, 0));
    }

    @Test
    void a_bath_that_lost_acid_and_water_is_brought_to_its_level() {
        Additions answer = (Additions)
                MakeUp.plan(new Now(180, new VolumeStrength(30, 4)), new VolumeStrength(35, 5), 200, false);
        assertThat(answer.drawOffLitres()).isZero();
        assertThat(answer.nitricLitres()).isCloseTo(16, within(1e-9));
        assertThat(answer.hydrofluoricLitres()).isCloseTo(2.8, within(1e-9));
        assertThat(answer.waterLitres()).isCloseTo(1.2, within(1e-9));
        assertThat(answer.keptShare()).isCloseTo(0.9, within(1e-12));
    }

    /** 35.0 vol-% wanted, 30 there, in a full tank: (70 - 60) / 70 of the water has to make room, a seventh. */
    @Test
    void a_full_tank_says_how_much_to_draw_off_first() {
        Now full = new Now(200, new VolumeStrength(30, 0));
        VolumeStrength target = new VolumeStrength(35, 0);
        MakeUp.WouldOverflow no = (MakeUp.WouldOverflow) MakeUp.plan(full, target, 200, false);
        assertThat(no.litresNeeded()).isCloseTo(200.0 * 70 / 65, within(1e-9));
        assertThat(no.drawOffLitresFirst()).isCloseTo(200.0 * 5 / 70, within(1e-9));
        Additions yes = (Additions) MakeUp.plan(full, target, 200, true);
        assertThat(yes.drawOffLitres()).isEqualTo(no.drawOffLitresFirst());
        assertThat(yes.nitricLitres()).isCloseTo(yes.drawOffLitres(), within(1e-9));
        assertThat(yes.waterLitres()).isCloseTo(0, within(1e-9));
    }

    @Test
    void a_bath_that_is_too_strong_is_let_down_with_water() {
        Additions answer = (Additions)
                MakeUp.plan(new Now(100, new VolumeStrength(40, 6)), new VolumeStrength(20, 3), 200, false);
        assertThat(answer).isEqualTo(new Additions(0, 0, 0, 100, 200, 0.5));
        assertThat(MakeUp.plan(new Now(100, new VolumeStrength(40, 6)), new VolumeStrength(20, 3), 150, false))
                .isEqualTo(new MakeUp.WouldOverflow(200, 150, 25));
    }

    @Test
    void what_no_mixture_of_the_stocks_reaches_is_refused() {
        assertThat(MakeUp.plan(new Now(10, new VolumeStrength(30, 4)), new VolumeStrength(80, 30), 200, true))
                .isEqualTo(new MakeUp.TargetAboveStock(110));
    }

    @Test
    void an_acid_that_is_not_wanted_goes_only_with_the_whole_bath() {
        Now now = new Now(100, new VolumeStrength(30, 4));
        assertThat(MakeUp.plan(now, new VolumeStrength(30, 0), 500, false))
                .isEqualTo(new MakeUp.WouldOverflow(Double.POSITIVE_INFINITY, 500, 100));
        assertThat(MakeUp.plan(now, new VolumeStrength(30, 0), 500, true))
                .isEqualTo(new Additions(100, 150, 0, 350, 500, 0));
    }

    /** Acid in grams and litres of everything, counted apart from the solver: what was there, less drawn off, plus. */
    @Test
    void acids_and_volume_balance_and_nothing_is_negative() {
        Random random = new Random(43);
        for (int round = 0; round < 20_000; round++) {
            Now now = new Now(500 * random.nextDouble(), strength(random));
            VolumeStrength target = strength(random);
            double level = 1 + 600 * random.nextDouble();
            Additions plan = (Additions) MakeUp.plan(now, target, level, true);
            double kept = now.litres() - plan.drawOffLitres();
            AcidContent before = STOCKS.content(now.strength());
            AcidContent after = STOCKS.content(target);
            assertThat(kept * before.nitricGramsPerLitre() + plan.nitricLitres() * STOCKS.nitric().gramsPerLitre())
                    .isCloseTo(level * after.nitricGramsPerLitre(), within(1e-5));
            assertThat(kept * before.hydrofluoricGramsPerLitre()
                    + plan.hydrofluoricLitres() * STOCKS.hydrofluoric().gramsPerLitre())
                    .isCloseTo(level * after.hydrofluoricGramsPerLitre(), within(1e-5));
            assertThat(kept + plan.nitricLitres() + plan.hydrofluoricLitres() + plan.waterLitres())
                    .isCloseTo(level, within(1e-8));
            assertThat(plan.drawOffLitres()).isBetween(0.0, now.litres());
            assertThat(plan.nitricLitres()).isNotNegative();
            assertThat(plan.hydrofluoricLitres()).isNotNegative();
            assertThat(plan.waterLitres()).isNotNegative();
        }
    }

    /** No smaller draw-off would do: with a little less one of the three additions would have to be negative. */
    @Test
    void no_more_is_drawn_off_than_has_to_be() {
        Random random = new Random(47);
        int drawn = 0;
        for (int round = 0; round < 5000; round++) {
            Now now = new Now(100 + 400 * random.nextDouble(), strength(random));
            VolumeStrength target = strength(random);
            double level = now.litres() * (1 + 0.2 * random.nextDouble());
            Additions plan = (Additions) MakeUp.plan(now, target, level, true);
            boolean adding = MakeUp.plan(now, target, level, false) instanceof Additions;
            assertThat(adding).isEqualTo(plan.drawOffLitres() == 0);
            if (plan.drawOffLitres() > 0) {
                drawn++;
                double smallest = Math.min(plan.waterLitres(), Math.min(plan.nitricLitres(),
                        plan.hydrofluoricLitres()));
                assertThat(smallest).isCloseTo(0, within(1e-8));
            }
        }
        assertThat(drawn).isGreaterThan(1000);
    }

    @Test
    void a_stronger_target_never_takes_less_acid() {
        Random random = new Random(53);
        for (int round = 0; round < 5000; round++) {
            Now now = new Now(300 * random.nextDouble(), strength(random));
            VolumeStrength target = strength(random);
            VolumeStrength stronger = new VolumeStrength(target.nitricPercent() * 1.05, target.hydrofluoricPercent());
            double level = 400;
            if (MakeUp.plan(now, target, level, false) instanceof Additions less
                    && MakeUp.plan(now, stronger, level, false) instanceof Additions more) {
                assertThat(more.nitricLitres()).isGreaterThan(less.nitricLitres());
                assertThat(more.waterLitres()).isLessThan(less.waterLitres());
            }
        }
    }

    @Test
    void baths_that_cannot_be_are_refused() {
        assertThatThrownBy(() -> new Now(-1, new VolumeStrength(1, 1))).hasMessageContaining("bath");
        assertThatThrownBy(() -> new Now(10, new VolumeStrength(90, 11))).hasMessageContaining("stronger");
        assertThatThrownBy(() -> MakeUp.plan(new Now(1, new VolumeStrength(1, 1)), new VolumeStrength(1, 1), 0, true))
                .hasMessageContaining("level");
    }

    private static VolumeStrength strength(Random random) {
        return new VolumeStrength(5 + 40 * random.nextDouble(), 0.5 + 8 * random.nextDouble());
    }
}

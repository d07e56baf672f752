package brightseam.traveller;

import static brightseam.traveller.Steps.cautious;
import static brightseam.traveller.Steps.gap;
import static brightseam.traveller.Steps.held;
import static brightseam.traveller.Steps.in;
import static brightseam.traveller.Steps.mixed;
import static brightseam.traveller.Steps.read;
import static brightseam.traveller.Steps.worn;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.kernel.StepId;
import brightseam.procedure.BinClass;
import brightseam.procedure.Hold;
import brightseam.procedure.Mix;
import brightseam.procedure.ReadingSpec;
import brightseam.procedure.Step;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** The tightest of what several procedures ask at one step. */
class LoadLimitsTest {

    private static final Step PICKLE = TestProcedures.tube().step(new StepId("pickle"));

    @Test
    void the_longest_minimum_meets_the_shortest_maximum_and_the_shortest_gap() {
        Step tightest = tightest(PICKLE, after(held(90, 240), gap(30)), after(held(30, 150), gap(45)));
        assertEquals(Optional.of(new Hold(Duration.ofSeconds(90), Optional.of(Duration.ofSeconds(150)))),
                tightest.hold());
        assertEquals(Duration.ofSeconds(30), tightest.gap().orElseThrow().maximum());
    }

    @Test
    void a_maximum_that_only_one_has_counts_for_all() {
        Step rinse = TestProcedures.tube().step(new StepId("acid-rinse"));
        assertEquals(Optional.of(Duration.ofSeconds(300)),
                tightest(rinse, held(60, 300).apply(rinse)).hold().orElseThrow().maximum());
    }

    @Test
    void readings_lie_inside_every_limit_with_the_fewest_decimals() {
        ReadingSpec reading = tightest(PICKLE, read("25.5", "60", 1).apply(PICKLE)).readings().getFirst();
        assertEquals(Optional.of(new BigDecimal("25.5")), reading.limits().minimum());
        assertEquals(Optional.of(new BigDecimal("40")), reading.limits().maximum());
        assertEquals(1, reading.decimals());
    }

    @Test
    void cautions_join_and_gloves_count_where_any_asks_for_them() {
        Step tightest = tightest(after(cautious("hydrofluoric-acid"), worn(null)),
                after(cautious("nitric-fumes", "hydrofluoric-acid"), worn("acid gauntlets")));
        assertEquals(List.of("hydrofluoric-acid", "nitric-fumes"), tightest.cautions());
        assertEquals(Optional.of("acid gauntlets"), tightest.gloves());
        assertEquals(Mix.SAME_GRADE, tightest(PICKLE, mixed(Mix.SAME_GRADE).apply(PICKLE)).mix());
    }

    @Test
    void what_cannot_be_met_by_all_is_named() {
        assertEquals(Set.of(LoadLimits.Clash.HOLD), clashes(PICKLE, held(180, 400).apply(PICKLE)));
        assertEquals(Set.of(LoadLimits.Clash.READING), clashes(PICKLE, read("41", "60", 1).apply(PICKLE)));
        assertEquals(Set.of(LoadLimits.Clash.GLOVES), clashes(PICKLE, worn("nitrile").apply(PICKLE)));
        assertEquals(Set.of(LoadLimits.Clash.BINS), clashes(PICKLE, in(BinClass.CLEAN_BIN).apply(PICKLE)));
        assertEquals(Optional.empty(), LoadLimits.tightest(List.of(PICKLE, worn("nitrile").apply(PICKLE))));
    }

    @Test
    void a_value_has_to_be_writable_inside_the_limits() {
        assertEquals(Set.of(LoadLimits.Clash.READING),
                clashes(read("30.2", "30.8", 1).apply(PICKLE), read("20", "40", 0).apply(PICKLE)));
        assertEquals(Set.of(), clashes(read("30.2", "31", 1).apply(PICKLE), read("20", "40", 0).apply(PICKLE)));
    }

    @Test
    void bins_that_suit_all_are_left_and_a_step_that_names_none_takes_any() {
        Step dry = TestProcedures.tube().step(new StepId("dry"));
        Step either = in(BinClass.PROCESS_BASKET, BinClass.CLEAN_BIN).apply(dry);
        assertEquals(Set.of(BinClass.PROCESS_BASKET), tightest(either, dry).bins());
        assertEquals(Set.of(BinClass.PROCESS_BASKET), tightest(in().apply(dry), dry).bins());
    }

    @Test
    void one_step_is_the_same_kind_at_the_same_station_with_the_same_readings() {
        assertTrue(LoadLimits.isSame(PICKLE, after(held(10, 20), worn(null), gap(5), cautious())));
        assertFalse(LoadLimits.isSame(PICKLE, TestProcedures.tube().step(new StepId("degrease"))));
        assertFalse(LoadLimits.isSame(PICKLE, TestProcedures.altered(
                PICKLE, PICKLE.bins(), PICKLE.signedBy(), List.of())));
    }

    /** Whoever keeps the tightest limits keeps everybody's, and where there are none, nobody could. */
    @Test
    void what_keeps_the_tightest_keeps_every_one() {
        Random random = new Random(5);
        int met = 0;
        for (int round = 0; round < 2_000; round++) {
            List<Step> steps = new ArrayList<>();
            for (int i = 0; i < 2 + random.nextInt(3); i++) {
                int low = random.nextInt(120);
                steps.add(held(low, low + 1 + random.nextInt(120)).apply(PICKLE));
            }
            Optional<Step> tightest = LoadLimits.tightest(steps);
            for (int seconds = 0; seconds < 240; seconds++) {
                Duration time = Duration.ofSeconds(seconds);
                boolean all = steps.stream().allMatch(step -> keeps(step, time));
                assertTrue(!all || tightest.isPresent() || seconds == lonelySecond(steps), steps.toString());
                assertEquals(all && tightest.isPresent(), tightest.filter(step -> keeps(step, time)).isPresent());
            }
            met += tightest.isPresent() ? 1 : 0;
        }
        assertTrue(met > 200 && met < 1_800, "loads that meet: " + met);
    }

    /** A maximum that equals another's minimum leaves one instant, which no hands can meet: refused as no time. */
    private static int lonelySecond(List<Step> steps) {
        return steps.stream().mapToInt(step -> (int) step.hold().orElseThrow().minimum().toSeconds())
                .max().orElseThrow();
    }

    private static boolean keeps(Step step, Duration time) {
        Hold hold = step.hold().orElseThrow();
        return time.compareTo(hold.minimum()) >= 0
                && hold.maximum().filter(longest -> time.compareTo(longest) > 0).isEmpty();
    }

    @SafeVarargs
    private static Step after(UnaryOperator<Step>... changes) {
        Step step = PICKLE;
        for (UnaryOperator<Step> change : changes) {
            step = change.apply(step);
        }
        return step;
    }

    private static Step tightest(Step... steps) {
        return LoadLimits.tightest(List.of(steps)).orElseThrow();
    }

    private static Set<LoadLimits.Clash> clashes(Step... steps) {
        return LoadLimits.clashes(List.of(steps));
    }
}

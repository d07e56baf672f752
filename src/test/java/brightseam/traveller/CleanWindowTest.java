package brightseam.traveller;

import static brightseam.procedure.BinClass.CLEAN_BIN;
import static brightseam.procedure.BinClass.PROCESS_BASKET;
import static brightseam.procedure.BinClass.SEALED_BAG;
import static brightseam.procedure.BinClass.SHOP_BIN;
import static java.time.Duration.ofDays;
import static java.time.Duration.ofHours;
import static java.time.Duration.ofMillis;
import static java.time.Duration.ofMinutes;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.kernel.StepId;
import brightseam.procedure.SignedBy;
import brightseam.procedure.Step;
import brightseam.procedure.WindowLimits;
import brightseam.traveller.TravellerEvent.*;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The clean window: 4 hours open, 24 in a closed clean bin, 168 in a sealed bag; 30 minutes have to be left. */
class CleanWindowTest {

    @Test
    void the_wipe_opens_the_window() {
        Shop shop = Shop.withLotAt("wipe").does(ask -> ask.start("wipe"))
                .when(ask -> ask.sign("wipe", Commands.FABRICATOR)).thenEvents(StepSigned.class, WindowOpened.class);
        assertEquals(ofHours(4), ((Window.Open) shop.traveller().window()).remaining(shop.now()));
    }

    @Test
    void handling_uses_the_window_up_at_its_own_rate() {
        Shop shop = Shop.withLotAt("white-cloth").passes(ofHours(1)).does(Commands::close).passes(ofHours(6));
        Window.Open open = (Window.Open) shop.traveller().window();
        assertEquals(ofHours(12), open.remaining(shop.now()), "a quarter in the open, a quarter in the closed bin");
        shop.does(Commands::open);
        open = (Window.Open) shop.traveller().window();
        assertEquals(ofHours(2), open.remaining(shop.now()));
    }

    @Test
    void the_arithmetic_agrees_with_exact_decimals_over_random_handling() {
        Random random = new Random(7);
        for (int round = 0; round < 2_000; round++) {
            long open = 1 + random.nextLong(ofDays(3).toMillis());
            long closed = open + random.nextLong(ofDays(60).toMillis());
            long sealed = closed + random.nextLong(ofDays(4000).toMillis());
            WindowLimits limits = new WindowLimits(ofMillis(open), ofMillis(closed), ofMillis(sealed));
            var now = new Shop(TestProcedures.tube()).now();
            Window.Open window = Window.Open.at(now, limits, Handling.OPEN);
            BigDecimal used = BigDecimal.ZERO;
            Handling handling = Handling.OPEN;
            for (int i = 0; i < 6; i++) {
                long millis = random.nextLong(handling.limitOf(limits).toMillis() / 6 + 1);
                used = used.add(new BigDecimal(millis).divide(
                        new BigDecimal(handling.limitOf(limits).toMillis()), 30, RoundingMode.HALF_UP));
                now = now.plus(ofMillis(millis));
                handling = Handling.values()[random.nextInt(3)];
                window = window.handled(handling, now);
            }
            BigDecimal limit = new BigDecimal(handling.limitOf(limits).toMillis());
            BigDecimal exact = BigDecimal.ONE.subtract(used).max(BigDecimal.ZERO).multiply(limit);
            BigDecimal found = new BigDecimal(window.remaining(now).toMillis());
            BigDecimal slack = limit.movePointLeft(8).add(BigDecimal.ONE);
            assertTrue(found.compareTo(exact) <= 0, () -> "never longer than exact");
            assertTrue(exact.subtract(found).compareTo(slack) <= 0, found + " against " + exact);
        }
    }

    @Test
    void a_sealed_bag_of_half_a_year_is_counted_right() {
        var now = new Shop(TestProcedures.tube()).now();
        Window.Open open = Window.Open.at(now,
                new WindowLimits(ofHours(4), ofDays(30), ofDays(180)), Handling.SEALED_BAG);
        assertEquals(ofDays(45), open.remaining(now.plus(ofDays(135))));
        assertFalse(open.hasRunOut(now.plus(ofDays(180).minusMillis(20))));
        assertTrue(open.hasRunOut(now.plus(ofDays(180))));
    }

    @Test
    void a_window_that_runs_out_sends_the_pieces_back_to_the_wipe() {
        Shop shop = Shop.withLotAt("white-cloth").passes(ofHours(4).minusMillis(1)).when(Commands::watch).thenEvents()
                .passes(ofMillis(1)).when(Commands::watch).thenEvents(WindowEnded.class, ReturnedToStep.class)
                .when(Commands::watch).thenEvents();
        assertEquals(new StepId("wipe"), shop.traveller().currentStep().orElseThrow());
        assertEquals(WindowEnd.RUN_OUT, shop.lastOf(WindowEnded.class).why());
        assertEquals(1, shop.traveller().superseded().size(), "the wipe's signature stays");
        shop.goesOnToTheEnd();
    }

    @Test
    void a_wall_clock_that_is_set_neither_stretches_nor_shortens_the_window() {
        Shop.withLotAt("white-cloth").wallClockIsSet(ofDays(2)).when(Commands::watch).thenEvents()
                .wallClockIsSet(ofDays(-9)).passes(ofHours(4)).when(Commands::watch)
                .thenEvents(WindowEnded.class, ReturnedToStep.class);
    }

    @Test
    void a_touch_ends_the_window_and_returns_the_pieces_to_the_degreaser() {
        Shop shop = Shop.withLotAt("bagging").when(ask -> ask.touch("bare hand"))
                .thenEvents(TouchReported.class, WindowEnded.class, ReturnedToStep.class);
        assertEquals(new StepId("degrease"), shop.traveller().currentStep().orElseThrow());
        assertEquals(WindowEnd.TOUCHED, shop.lastOf(WindowEnded.class).why());
        shop.when(ask -> ask.touch("sleeve")).thenRefused("nothing-to-touch").goesOnToTheEnd();
    }

    @Test
    void a_touch_without_words_is_refused() {
        Shop.withLotAt("bagging").when(ask -> ask.touch(" ")).thenRefused("reason-missing");
    }

    @Test
    void clean_pieces_go_into_clean_bins_only() {
        Shop.withLotAt("bagging").when(ask -> ask.put("B-1", SHOP_BIN)).thenRefused("wrong-bin-class")
                .when(ask -> ask.put("B-2", PROCESS_BASKET)).thenRefused("wrong-bin-class")
                .when(ask -> ask.put("B-3", SEALED_BAG)).thenEvents(PutInBin.class);
    }

    @Test
    void a_step_that_names_no_bin_takes_any_while_dirty_and_clean_ones_while_clean() {
        Step cloth = TestProcedures.tube().step(new StepId("white-cloth"));
        Shop clean = Shop.withLot(TestProcedures.tubeWith(TestProcedures.altered(
                cloth, Set.of(), SignedBy.FABRICATOR, cloth.readings()))).goesOnTo("white-cloth");
        clean.when(ask -> ask.put("B-1", SHOP_BIN)).thenRefused("wrong-bin-class")
                .when(ask -> ask.put("B-2", SEALED_BAG)).thenEvents(PutInBin.class);
        Shop.withLotAt("final-review").when(ask -> ask.put("B-5", SHOP_BIN)).thenEvents(PutInBin.class);
    }

    @Test
    void a_window_does_not_open_over_a_basket() {
        Step wipe = TestProcedures.tube().step(new StepId("wipe"));
        Shop.withLot(TestProcedures.tubeWith(TestProcedures.altered(
                        wipe, Set.of(PROCESS_BASKET, CLEAN_BIN), SignedBy.FABRICATOR, List.of()))).goesOnTo("wipe")
                .does(ask -> ask.start("wipe"))
                .when(ask -> ask.sign("wipe", Commands.FABRICATOR)).thenRefused("wrong-bin-class")
                .does(ask -> ask.put("B-2", CLEAN_BIN))
                .when(ask -> ask.sign("wipe", Commands.FABRICATOR)).thenEvents(StepSigned.class, WindowOpened.class);
    }

    @Test
    void the_lock_wants_the_margin_and_takes_exactly_that() {
        Shop shop = Shop.withLotAt("pass-in").does(Commands::open);
        Duration left = ((Window.Open) shop.traveller().window()).remaining(shop.now());
        shop.passes(left.minus(ofMinutes(30))).when(ask -> ask.start("pass-in")).thenRefused("bin-not-closed")
                .passes(ofMillis(1))
                .when(ask -> ask.start("pass-in")).thenRefused("window-too-short", "bin-not-closed");
    }

    @Test
    void a_window_that_shrinks_below_the_margin_between_start_and_signature_is_noticed() {
        Shop shop = Shop.withLotAt("pass-in").does(ask -> ask.start("pass-in"));
        Duration left = ((Window.Open) shop.traveller().window()).remaining(shop.now());
        shop.passes(left.minus(ofMinutes(29))).when(ask -> ask.sign("pass-in", Commands.LEAD))
                .thenRefused("window-too-short");
        assertEquals(List.of(Missing.TooLittleWindow.class), Readiness.missing(
                shop.traveller(), shop.procedure, shop.now()).stream().map(Object::getClass).toList());
    }

    @Test
    void an_open_bag_stays_outside() {
        Shop shop = Shop.withLotAt("pass-in").does(ask -> ask.start("pass-in")).does(Commands::open)
                .when(ask -> ask.sign("pass-in", Commands.LEAD)).thenRefused("bin-not-closed");
        assertEquals(List.of(Missing.BinOpen.class), Readiness.missing(shop.traveller(), shop.procedure, shop.now())
                .stream().map(Object::getClass).toList());
        shop.does(Commands::close).when(ask -> ask.sign("pass-in", Commands.LEAD))
                .thenEvents(StepSigned.class, PassedIn.class, WindowEnded.class);
        assertEquals(Phase.PASSED_IN, shop.traveller().phase());
    }

    @Test
    void an_inspector_who_passes_in_is_held_to_the_same_rules() {
        Step passIn = TestProcedures.tube().step(new StepId("pass-in"));
        Shop shop = Shop.withLot(TestProcedures.tubeWith(TestProcedures.altered(
                passIn, passIn.bins(), SignedBy.INSPECTOR, List.of()))).goesOnTo("pass-in").does(Commands::open)
                .when(ask -> ask.stamp("pass-in", Commands.INSPECTOR)).thenRefused("bin-not-closed")
                .does(Commands::close).when(ask -> ask.stamp("pass-in", Commands.INSPECTOR))
                .thenEvents(StepStarted.class, StepStamped.class, PassedIn.class, WindowEnded.class);
        assertEquals(Phase.PASSED_IN, shop.traveller().phase());
    }
}

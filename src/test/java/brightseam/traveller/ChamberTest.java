package brightseam.traveller;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.kernel.StepId;
import brightseam.procedure.BinClass;
import brightseam.procedure.SignedBy;
import brightseam.procedure.Step;
import brightseam.traveller.TravellerEvent.*;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Into the chamber in a session, the clean window in there, and the signature under the welding. */
class ChamberTest {

    @Test
    void passing_in_begins_signs_and_takes_the_pieces_out_of_their_bag_in_one() {
        Shop shop = at("pass-in").when(Inside::enter);
        shop.thenEvents(StepStarted.class, ContactMade.class, StepSigned.class, PassedIn.class, EnteredChamber.class);
        assertEquals(Phase.PASSED_IN, shop.traveller().phase());
        assertEquals(Optional.empty(), shop.traveller().placement());
        assertEquals(Optional.of(new StepId("pass-in")), shop.traveller().passedInBy());
        assertInstanceOf(Window.Open.class, shop.traveller().window());
    }

    @Test
    void every_rule_of_the_lock_stands_in_a_session_too() {
        at("pass-in").does(Commands::open).when(Inside::enter).thenRefused("bin-not-closed");
        at("pass-in").when(ask -> Inside.enter(ask, Commands.FABRICATOR, List.of())).thenRefused("contact-not-scanned");
        at("pass-in").when(ask -> Inside.enter(ask, Commands.INSPECTOR, ask.scanned("pass-in")))
                .thenRefused("role-missing");
        at("pass-in").does(ask -> ask.report(1)).when(Inside::enter).thenRefused("in-quarantine");
        at("bagging").when(Inside::enter).thenRefused("not-this-step-yet", "bin-not-closed");
        at("pass-in").passes(Duration.ofHours(167).plusMinutes(40)).when(Inside::enter).thenRefused("window-too-short");
        at("weld").when(Inside::enter).thenRefused("already-signed");
    }

    @Test
    void a_procedure_that_passes_in_at_the_bench_does_so() {
        Shop.withLotAt("pass-in").when(Inside::enter).thenRefused("passes-in-at-the-bench");
        Shop.withLotAt("weld").when(ask -> Inside.arc(ask, "J03", 1)).thenRefused("not-welded-by-procedure");
        Shop.withLotAt("weld").when(ask -> Inside.sign(ask, Commands.FABRICATOR))
                .thenRefused("not-welded-by-procedure");
    }

    @Test
    void the_bench_neither_begins_nor_signs_what_a_session_does() {
        for (String step : List.of("pass-in", "weld")) {
            at(step).when(ask -> ask.start(step)).thenRefused("continues-in-session");
            at(step).when(ask -> ask.sign(step, Commands.LEAD)).thenRefused("continues-in-session");
        }
    }

    @Test
    void the_guide_makes_ready_for_the_lock_and_then_points_to_the_session() {
        Shop shop = at("pass-in");
        assertInstanceOf(NextAction.AwaitSession.class, Guide.next(shop.traveller(), shop.procedure));
        shop.does(Commands::open);
        assertInstanceOf(NextAction.CloseBin.class, Guide.next(shop.traveller(), shop.procedure));
        shop.does(ask -> ask.put("B-77", BinClass.CLEAN_BIN)).does(Commands::close).does(Inside::enter);
        assertEquals("weld", ((NextAction.AwaitSession) Guide.next(shop.traveller(), shop.procedure))
                .step().id().value());
    }

    @Test
    void the_window_runs_on_in_the_chamber_as_fast_as_in_the_bag_that_was_passed_in() {
        Shop shop = at("pass-in");
        Duration before = left(shop);
        shop.does(Inside::enter);
        assertEquals(before, left(shop));
        shop.passes(Duration.ofHours(20));
        assertEquals(before.minusHours(20), left(shop).plusMillis(rounding(before.minusHours(20), left(shop))));
    }

    @Test
    void what_becomes_of_a_bin_outside_does_not_touch_the_window_inside() {
        Shop shop = at("weld").passes(Duration.ofHours(1));
        Duration before = left(shop);
        shop.given(List.of(new PutInBin(shop.ask.by(Commands.FABRICATOR), new brightseam.kernel.BinId("B-1"),
                BinClass.CLEAN_BIN, false))).passes(Duration.ofHours(1));
        assertTrue(left(shop).compareTo(before.minusMinutes(61)) > 0, "as if still in the bag: " + left(shop));
    }

    @Test
    void out_through_the_lock_it_runs_as_in_the_open() {
        Shop shop = at("weld");
        long sealed = left(shop).toMillis();
        shop.does(ask -> Inside.lockPass(ask, false));
        assertEquals(sealed / 42.0, left(shop).toMillis(), 2.0, "168 h in the bag are 4 h in the open");
    }

    @Test
    void what_was_in_another_session_is_passed_in_again_first() {
        Shop shop = at("weld");
        shop.when(ask -> {
            ArcFact arc = Inside.arc(ask, "J03", 1).arc();
            return new TravellerCommand.BeginArc(ask.by(Commands.FABRICATOR), new ArcFact(arc.joint(),
                    new brightseam.kernel.SessionId("CS-0013"), arc.chamber(), 1, arc.parts(), arc.filler(),
                    arc.welder(), arc.backSide(), arc.contacts(), false));
        }).thenRefused("not-in-that-session");
    }

    @Test
    void a_window_that_runs_out_inside_returns_nothing_and_lets_no_new_joint_begin() {
        Shop shop = at("weld").does(ask -> Inside.arc(ask, "J03", 1)).passes(Duration.ofSeconds(20))
                .does(ask -> Inside.good(ask, "J03", 1)).passes(Duration.ofHours(200));
        shop.when(Commands::watch).thenEvents(WindowEnded.class);
        assertEquals(WindowEnd.RUN_OUT, shop.lastOf(WindowEnded.class).why());
        assertEquals(Phase.PASSED_IN, shop.traveller().phase());
        shop.when(ask -> Inside.arc(ask, "J04", 1)).thenRefused("window-over-inside");
        shop.when(ask -> Inside.arc(ask, "J03", 2)).thenEvents(ArcBegun.class);
    }

    @Test
    void pieces_whose_window_ran_out_inside_go_back_to_be_cleaned_when_somebody_says_so() {
        Shop shop = at("weld").passes(Duration.ofHours(200)).does(ask -> ask.report(1, 2, 3, 4));
        shop.does(ask -> ask.rework(1, "wipe", Commands.LEAD));
        assertEquals(Phase.ACTIVE, shop.traveller().phase());
        shop.goesOnTo("weld").when(ask -> Inside.arc(ask, "J03", 1)).thenEvents(StepStarted.class, ArcBegun.class);
    }

    @Test
    void the_signature_under_the_welding_ends_the_window() {
        Shop shop = at("weld").does(ask -> Inside.arc(ask, "J03", 1));
        shop.when(ask -> Inside.sign(ask, Commands.FABRICATOR)).thenRefused("arc-still-burning");
        shop.passes(Duration.ofSeconds(20)).does(ask -> Inside.good(ask, "J03", 1));
        shop.when(ask -> Inside.sign(ask, Commands.INSPECTOR)).thenRefused("role-missing");
        shop.when(ask -> Inside.sign(ask, Commands.FABRICATOR)).thenEvents(StepSigned.class, WindowEnded.class);
        assertEquals(WindowEnd.WELDED, shop.lastOf(WindowEnded.class).why());
        shop.when(ask -> Inside.sign(ask, Commands.FABRICATOR)).thenRefused("already-signed");
    }

    @Test
    void what_was_never_welded_is_not_signed() {
        at("weld").when(ask -> Inside.sign(ask, Commands.FABRICATOR)).thenRefused("not-started");
        at("pass-in").when(ask -> Inside.sign(ask, Commands.FABRICATOR)).thenRefused("not-this-step-yet",
                "not-started");
    }

    @Test
    void where_the_lock_closes_the_window_it_does_so_in_a_session() {
        Step review = TestProcedures.altered(TestProcedures.welded().step(new StepId("final-review")), Set.of(),
                SignedBy.INSPECTOR, List.of());
        Shop shop = Shop.withLot(TestProcedures.filler(review)).goesOnTo("pass-in").when(Inside::enter);
        shop.thenEvents(StepStarted.class, ContactMade.class, StepSigned.class, PassedIn.class, WindowEnded.class,
                EnteredChamber.class);
        assertEquals(WindowEnd.PASSED_IN, shop.lastOf(WindowEnded.class).why());
    }

    @Test
    void a_pass_through_the_lock_is_written_down_whatever_is_open() {
        at("weld").does(ask -> ask.report(1)).when(Inside::lockPass).thenEvents(LockPassed.class);
        Shop.withLot(TestProcedures.welded()).goesOnToTheEnd().when(Inside::lockPass).thenEvents(LockPassed.class);
    }

    @Test
    void suspicion_reaches_what_is_in_the_chamber() {
        Shop shop = at("weld").does(ask -> ask.suspect("pickle", Commands.LEAD));
        assertTrue(shop.traveller().isInQuarantine());
        shop.when(ask -> Inside.arc(ask, "J03", 1)).thenRefused("in-quarantine");
    }

    private static Shop at(String step) {
        return Shop.withLot(TestProcedures.welded()).goesOnTo(step);
    }

    private static Duration left(Shop shop) {
        return ((Window.Open) shop.traveller().window()).remaining(shop.now());
    }

    /** Shares are kept in billionths, rounded up: some milliseconds of a week. */
    private static long rounding(Duration expected, Duration found) {
        long millis = expected.minus(found).toMillis();
        assertTrue(Math.abs(millis) < 5, "off by " + millis + " ms");
        return millis;
    }
}

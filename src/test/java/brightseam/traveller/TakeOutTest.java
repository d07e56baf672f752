package brightseam.traveller;

import static java.time.Duration.ofMinutes;
import static java.time.Duration.ofSeconds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.kernel.BinId;
import brightseam.kernel.StepId;
import brightseam.procedure.BinClass;
import brightseam.traveller.Nonconformance.Cause;
import brightseam.traveller.TravellerEvent.HoldEnded;
import brightseam.traveller.TravellerEvent.NonconformanceOpened;
import brightseam.traveller.TravellerEvent.PiecesSetApart;
import brightseam.traveller.TravellerEvent.PutInBin;
import brightseam.traveller.TravellerEvent.SetApart;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Pieces that leave their load: alone, at that moment, and never in silence. */
class TakeOutTest {

    private static final StepId PICKLE = new StepId("pickle");
    private static final StepId RINSE = new StepId("acid-rinse");

    @Test
    void a_piece_leaves_the_acid_before_its_minimum_and_the_rest_stays_in() {
        Shop parent = inAcid().passes(ofSeconds(40)).when(TakeOutTest::piece).thenEvents(PiecesSetApart.class);
        Shop child = parent.child();
        assertEquals(List.of(SetApart.class, NonconformanceOpened.class, HoldEnded.class, NonconformanceOpened.class,
                PutInBin.class), child.record().stream().map(Object::getClass).toList());
        assertEquals(List.of(Cause.HOLD_CUT_SHORT, Cause.REPORTED), causes(child));
        assertEquals(new BinId("B-8"), child.traveller().placement().orElseThrow().bin());
        assertTrue(parent.traveller().run(PICKLE).orElseThrow().isHolding());
        assertFalse(parent.traveller().isInQuarantine());
        parent.passes(ofSeconds(20)).does(ask -> ask.endHold("pickle")).goesOnToTheEnd();
        assertEquals(List.of(1, 3, 4), parent.traveller().pieces());
    }

    @Test
    void after_the_minimum_nothing_was_cut_short() {
        Shop child = inAcid().passes(ofSeconds(70)).does(TakeOutTest::piece).child();
        assertEquals(List.of(Cause.REPORTED), causes(child));
        assertTrue(child.traveller().run(PICKLE).orElseThrow().holdEndedAt().isPresent());
    }

    @Test
    void the_gap_to_the_rinse_runs_for_what_was_taken_out_and_quarantine_does_not_stop_it() {
        Shop child = inAcid().passes(ofSeconds(70)).does(TakeOutTest::piece).child();
        GapClock gap = Guide.gap(child.traveller(), child.procedure).orElseThrow();
        assertEquals(child.now().plus(ofSeconds(60)), gap.latest());
        NextAction.Begin next = assertInstanceOf(NextAction.Begin.class,
                Guide.next(child.traveller(), child.procedure));
        assertEquals(RINSE, next.step().id());
        child.does(ask -> ask.start("acid-rinse")).passes(ofMinutes(2)).does(ask -> ask.endHold("acid-rinse"));
        child.when(ask -> ask.sign("pickle", Commands.FABRICATOR)).thenRefused("in-quarantine");
    }

    @Test
    void what_is_too_long_in_the_acid_is_known_on_both_sides() {
        Shop parent = inAcid().passes(ofMinutes(4)).when(TakeOutTest::piece)
                .thenEvents(NonconformanceOpened.class, PiecesSetApart.class);
        assertEquals(List.of(Cause.HOLD_OVERRUN, Cause.REPORTED), causes(parent.child()));
        assertEquals(List.of(Cause.HOLD_OVERRUN), causes(parent));
    }

    @Test
    void a_whole_lot_is_taken_out_itself() {
        Shop lot = inAcid().passes(ofSeconds(40))
                .when(ask -> ask.takeOut("T-1042.1", BinClass.PROCESS_BASKET, Commands.FABRICATOR, 1, 2, 3, 4))
                .thenEvents(NonconformanceOpened.class, HoldEnded.class, NonconformanceOpened.class, PutInBin.class);
        assertEquals(List.of(Cause.HOLD_CUT_SHORT, Cause.REPORTED), causes(lot));
        assertEquals(Commands.FABRICATOR, lot.lastOf(NonconformanceOpened.class).signature().orElseThrow().signer());
    }

    @Test
    void a_standing_load_parts_without_any_hold() {
        Shop parent = Shop.withLotAt("degrease").when(TakeOutTest::piece).thenEvents(PiecesSetApart.class);
        assertEquals(List.of(SetApart.class, NonconformanceOpened.class, PutInBin.class),
                parent.child().record().stream().map(Object::getClass).toList());
        parent.goesOnToTheEnd();
    }

    @Test
    void a_second_piece_leaves_the_same_soak_later() {
        Shop parent = inAcid().passes(ofSeconds(40)).does(TakeOutTest::piece).passes(ofSeconds(40));
        Shop second = parent.does(ask -> ask.takeOut("T-1042.2", BinClass.PROCESS_BASKET, Commands.LEAD, 4)).child();
        assertEquals(List.of(Cause.REPORTED), causes(second));
        assertEquals(List.of(1, 3), parent.traveller().pieces());
    }

    @Test
    void nobody_takes_out_without_role_reason_pieces_or_a_bin_that_suits() {
        inAcid().when(ask -> ask.takeOut("T-1042.1", BinClass.SHOP_BIN, Commands.FABRICATOR, 2))
                .thenRefused("wrong-bin-class")
                .when(ask -> ask.takeOut("T-1042.1", BinClass.PROCESS_BASKET, Commands.FABRICATOR, 9))
                .thenRefused("no-such-pieces")
                .when(ask -> ask.takeOut("T-1042", BinClass.PROCESS_BASKET, Commands.FABRICATOR, 2))
                .thenRefused("already-released")
                .when(ask -> new TravellerCommand.TakeOut(ask.by(Commands.FABRICATOR),
                        new brightseam.kernel.TravellerId("T-1042.1"), List.of(2), " ",
                        new TravellerCommand.BinFact(new BinId("B-9"), BinClass.PROCESS_BASKET, true), NOBODY))
                .thenRefused("role-missing", "reason-missing", "bin-is-closed", "already-in-that-bin");
    }

    @Test
    void moving_into_another_bin_during_a_soak_is_refused_and_so_is_a_desk_that_parts_the_lot() {
        inAcid().when(ask -> ask.put("B-8", BinClass.PROCESS_BASKET)).thenRefused("hold-still-running")
                .when(ask -> ask.setApart("T-1042.1", 2)).thenRefused("hold-still-running");
    }

    private static final brightseam.people.Signer NOBODY = new brightseam.people.Signer(
            new brightseam.kernel.BadgeId("P-0009"), "Kai Onn", List.of(), java.util.Optional.empty(), "badge+pin");

    private static TravellerCommand piece(Commands ask) {
        return ask.takeOut("T-1042.1", BinClass.PROCESS_BASKET, Commands.FABRICATOR, 2);
    }

    private static Shop inAcid() {
        return Shop.withLotAt("pickle").does(ask -> ask.put("B-9", BinClass.PROCESS_BASKET))
                .does(ask -> ask.start("pickle")).does(ask -> ask.read("pickle", "acid-temperature", "30"))
                .does(ask -> ask.beginHold("pickle"));
    }

    private static List<Cause> causes(Shop shop) {
        return shop.traveller().openNonconformances().stream().map(Nonconformance::cause).toList();
    }
}

package brightseam.traveller;

import static java.time.Duration.ofMinutes;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.kernel.TravellerId;
import brightseam.traveller.TravellerEvent.*;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Releasing lots and setting pieces apart. */
class LotsTest {

    @Test
    void a_lot_is_released_with_numbered_pieces_and_its_route() {
        Shop shop = new Shop(TestProcedures.tube()).when(ask -> ask.release("T-7", 3, "9", false))
                .thenEvents(Released.class);
        assertEquals(List.of(1, 2, 3), shop.traveller().pieces());
        assertEquals(shop.procedure.route(), shop.traveller().route());
        assertEquals(shop.procedure.ref(), shop.traveller().procedure());
        shop.when(ask -> ask.release("T-7", 3, "9", false)).thenRefused("already-released");
    }

    @Test
    void heat_grade_and_quantity_are_checked_together() {
        new Shop(TestProcedures.tube()).when(ask -> ask.release("T-7", 0, "5", true))
                .thenRefused("quantity-out-of-range", "heat-on-hold", "grade-not-allowed")
                .when(ask -> ask.release("T-7", 1000, "9", false)).thenRefused("quantity-out-of-range")
                .when(ask -> ask.release("T-7", 999, "9", false)).thenEvents(Released.class);
        new Shop(TestProcedures.tube()).when(ask -> ask.release("T-7", 1, "2", false)).thenEvents(Released.class);
    }

    @Test
    void without_a_release_there_is_nothing_to_decide() {
        Shop shop = new Shop(TestProcedures.tube());
        assertThrows(IllegalArgumentException.class, () -> shop.when(ask -> ask.start("cut")));
    }

    @Test
    void another_revision_than_the_pinned_one_is_a_mistake_of_the_caller() {
        Shop shop = Shop.withLot();
        var tube = TestProcedures.tube();
        var next = new brightseam.procedure.Procedure(new brightseam.procedure.ProcedureRef("TUBE", "B",
                "5e".repeat(32)), tube.title(), tube.scope(), tube.grades(), tube.steps(), tube.window(),
                tube.touchReturnsTo(), tube.sources());
        assertThrows(IllegalArgumentException.class, () -> TravellerDecider.decide(
                Optional.of(shop.traveller()), next, shop.ask.start("cut")));
    }

    @Test
    void pieces_set_apart_take_their_own_nonconformances_along() {
        Shop parent = Shop.withLotAt("final-review").does(ask -> ask.report(2)).does(ask -> ask.report(3, 4))
                .when(ask -> ask.setApart("T-1042.1", 2)).thenEvents(PiecesSetApart.class);
        Shop child = parent.child();
        assertEquals(List.of(1, 3, 4), parent.traveller().pieces());
        assertEquals(List.of(2), child.traveller().pieces());
        assertEquals(List.of(2), numbers(parent));
        assertEquals(List.of(1), numbers(child));
        child.does(ask -> ask.rework(1, "degrease", Commands.LEAD)).goesOnToTheEnd();
        parent.does(ask -> ask.decide(2, Disposition.USE_AS_IS, Commands.INSPECTOR)).goesOnToTheEnd();
    }

    @Test
    void a_nonconformance_of_pieces_on_both_sides_stays_open_on_both() {
        Shop parent = Shop.withLotAt("cut").does(ask -> ask.report(1, 2)).does(ask -> ask.setApart("T-1042.1", 2));
        Shop child = parent.child();
        assertEquals(List.of(1), parent.traveller().openNonconformances().getFirst().pieces());
        assertEquals(List.of(2), child.traveller().openNonconformances().getFirst().pieces());
    }

    @Test
    void a_piece_whose_neighbours_were_scrapped_takes_the_shared_nonconformance_along() {
        Shop parent = Shop.withLotAt("cut").does(ask -> ask.report(1, 2)).does(ask -> ask.report(1))
                .does(ask -> ask.decide(2, Disposition.SCRAP, Commands.LEAD)).does(ask -> ask.setApart("T-1042.1", 2));
        assertTrue(parent.child().traveller().isInQuarantine());
        assertFalse(parent.traveller().isInQuarantine());
        parent.goesOnToTheEnd();
    }

    @Test
    void the_childs_record_stands_by_itself() {
        Shop parent = Shop.withLotAt("weld").does(ask -> ask.setApart("T-1042.1", 1, 4));
        Shop child = parent.child();
        SetApart first = (SetApart) child.record().getFirst();
        assertEquals(parent.record().subList(0, parent.record().size() - 1), first.history());
        assertEquals(parent.record().size() - 1, first.parentVersion());
        assertEquals(Optional.of(new TravellerId("T-1042")), child.traveller().parent());
        assertEquals(Phase.PASSED_IN, child.traveller().phase());
        assertEquals(parent.traveller().runs(), child.traveller().runs());
        assertEquals(parent.traveller().window(), child.traveller().window());
        assertEquals(parent.traveller().placement(), child.traveller().placement());
        Shop grandchild = child.does(ask -> ask.setApart("T-1042.1.1", 4)).child();
        assertEquals(List.of(4), grandchild.traveller().pieces());
        grandchild.goesOnToTheEnd();
        child.goesOnToTheEnd();
    }

    @Test
    void what_time_brought_about_at_the_parting_is_in_the_childs_history_too() {
        Shop parent = Shop.withLotAt("pickle").does(ask -> ask.start("pickle"))
                .does(ask -> ask.read("pickle", "acid-temperature", "30")).does(ask -> ask.beginHold("pickle"))
                .passes(ofMinutes(2)).does(ask -> ask.endHold("pickle")).passes(ofMinutes(2))
                .when(ask -> ask.setApart("T-1042.1", 1)).thenEvents(NonconformanceOpened.class, PiecesSetApart.class);
        Shop child = parent.child();
        assertEquals(List.of(1), child.traveller().openNonconformances().getFirst().pieces());
        child.when(Commands::watch).thenEvents();
        parent.when(Commands::watch).thenEvents();
    }

    @Test
    void parting_is_refused_for_strange_pieces_all_pieces_no_reason_and_the_same_label() {
        Shop.withLot().when(ask -> ask.setApart("T-1042.1", 7)).thenRefused("no-such-pieces")
                .when(ask -> ask.setApart("T-1042.1")).thenRefused("no-such-pieces")
                .when(ask -> ask.setApart("T-1042.1", 1, 2, 3, 4)).thenRefused("nothing-would-remain")
                .when(ask -> ask.setApart("T-1042", 1)).thenRefused("already-released")
                .when(ask -> new TravellerCommand.SetApart(ask.by(Commands.FABRICATOR), new TravellerId("T-1042.1"),
                        List.of(1), " ", Commands.FABRICATOR)).thenRefused("reason-missing");
    }

    @Test
    void a_decision_that_sets_nothing_apart_makes_no_child() {
        assertEquals(Optional.empty(), Parting.child(Shop.withLot().record(), List.of()));
    }

    private static List<Integer> numbers(Shop shop) {
        return Stream.of(shop.traveller()).flatMap(t -> t.openNonconformances().stream())
                .map(Nonconformance::number).toList();
    }
}

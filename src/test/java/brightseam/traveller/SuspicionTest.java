package brightseam.traveller;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.kernel.ContactKind;
import brightseam.kernel.StepId;
import brightseam.traveller.TravellerEvent.*;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What touched the pieces is kept, and can prove bad at any time later. */
class SuspicionTest {

    @Test
    void what_touches_the_pieces_is_written_down_with_the_start() {
        Contact fill = new Contact(ContactKind.BATH, "pickling-acid", "S-1", "fill 3");
        Shop shop = Shop.withLotAt("cut").when(ask -> ask.startTouchedBy(fill, "cut"))
                .thenEvents(StepStarted.class, ContactMade.class);
        assertEquals(List.of(fill), shop.lastOf(ContactMade.class).contacts());
    }

    @Test
    void a_suspect_lot_waits_for_a_disposition() {
        Shop shop = Shop.withLotAt("white-cloth")
                .when(ask -> ask.suspect("pickle", Commands.LEAD)).thenEvents(NonconformanceOpened.class)
                .when(ask -> ask.start("white-cloth")).thenRefused("in-quarantine");
        assertTrue(shop.traveller().isSuspect());
        assertEquals(new StepId("pickle"), shop.lastOf(NonconformanceOpened.class).step());
        shop.does(ask -> ask.rework(1, "degrease", Commands.LEAD));
        assertFalse(shop.traveller().isSuspect());
    }

    @Test
    void a_closed_lot_comes_back_when_it_is_put_under_suspicion() {
        Shop shop = Shop.withLot().goesOnToTheEnd();
        assertTrue(shop.traveller().hasEnded());
        shop.when(ask -> ask.suspect("pickle", Commands.INSPECTOR)).thenEvents(NonconformanceOpened.class);
        assertFalse(shop.traveller().hasEnded());
        assertTrue(shop.traveller().isInQuarantine());
        assertInstanceOf(NextAction.AwaitDisposition.class, Guide.next(shop.traveller(), TestProcedures.tube()));
        shop.when(ask -> ask.decide(1, Disposition.USE_AS_IS, Commands.INSPECTOR)).thenEvents(Dispositioned.class);
        assertTrue(shop.traveller().hasEnded());
    }

    @Test
    void a_closed_lot_that_is_reworked_goes_through_everything_again() {
        Shop shop = Shop.withLot().goesOnToTheEnd().does(ask -> ask.suspect("pickle", Commands.INSPECTOR))
                .does(ask -> ask.rework(1, "degrease", Commands.INSPECTOR));
        assertEquals(Phase.ACTIVE, shop.traveller().phase());
        assertEquals(Optional.empty(), shop.traveller().placement(), "taken out of its bin when it was closed");
        shop.goesOnToTheEnd();
        assertEquals(Phase.CLOSED, shop.traveller().phase());
        assertEquals(2, shop.traveller().run(new StepId("pickle")).orElseThrow().pass());
    }

    @Test
    void suspicion_needs_a_role_and_a_reason_and_something_left() {
        Shop.withLotAt("white-cloth").when(ask -> ask.suspect("pickle", Commands.FABRICATOR))
                .thenRefused("role-missing");
        Shop.withLotAt("white-cloth").when(ask -> new TravellerCommand.MarkSuspect(ask.by(Commands.LEAD),
                Optional.empty(), " ", Commands.LEAD)).thenRefused("reason-missing");
        Shop.withLotAt("white-cloth").does(ask -> ask.report(1, 2, 3, 4))
                .does(ask -> ask.decide(1, Disposition.SCRAP, Commands.LEAD))
                .when(ask -> ask.suspect("pickle", Commands.LEAD)).thenRefused("traveller-ended");
    }
}

package brightseam.traveller;

import static java.time.Duration.ofMinutes;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.kernel.StepId;
import brightseam.traveller.TravellerEvent.*;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Quarantine, dispositions by role, rework and scrap. */
class QuarantineTest {

    @Test
    void quarantine_stops_starting_signing_stamping_and_rejecting() {
        Shop.withLotAt("cut").does(ask -> ask.report(2)).when(ask -> ask.start("cut")).thenRefused("in-quarantine");
        Shop.withLotAt("final-review").does(ask -> ask.report(2))
                .when(ask -> ask.stamp("final-review", Commands.INSPECTOR)).thenRefused("in-quarantine")
                .when(ask -> ask.reject("final-review", Commands.INSPECTOR, 1)).thenRefused("in-quarantine");
        Shop.withLotAt("degrease").does(ask -> ask.start("degrease"))
                .does(ask -> ask.read("degrease", "bath-temperature", "60")).does(ask -> ask.report(2))
                .when(ask -> ask.beginHold("degrease")).thenRefused("in-quarantine");
    }

    @Test
    void dispositions_go_by_role() {
        Shop shop = Shop.withLotAt("final-review").does(ask -> ask.report(2));
        for (Disposition disposition : Disposition.values()) {
            shop.when(ask -> decide(ask, disposition, Commands.FABRICATOR)).thenRefused("role-missing");
        }
        shop.when(ask -> ask.decide(1, Disposition.USE_AS_IS, Commands.LEAD)).thenRefused("role-missing")
                .when(ask -> ask.decide(1, Disposition.REPAIR, Commands.LEAD)).thenRefused("role-missing")
                .when(ask -> ask.decide(1, Disposition.REPAIR, Commands.INSPECTOR)).thenEvents(Dispositioned.class)
                .when(ask -> ask.decide(1, Disposition.REPAIR, Commands.INSPECTOR))
                .thenRefused("nonconformance-not-open");
        Shop.withLotAt("final-review").does(ask -> ask.report(2))
                .when(ask -> ask.decide(1, Disposition.SCRAP, Commands.LEAD))
                .thenEvents(Dispositioned.class, PiecesScrapped.class);
        Shop.withLotAt("final-review").does(ask -> ask.report(2))
                .when(ask -> ask.rework(1, "weld", Commands.LEAD))
                .thenEvents(Dispositioned.class, ReturnedToStep.class);
    }

    private static TravellerCommand decide(Commands ask, Disposition disposition, brightseam.people.Signer who) {
        return disposition == Disposition.REWORK ? ask.rework(1, "weld", who) : ask.decide(1, disposition, who);
    }

    @Test
    void rework_names_a_step_that_the_procedure_allows_and_nothing_else_does() {
        Shop.withLotAt("water-break").does(ask -> ask.report(1))
                .when(ask -> ask.rework(1, "cut", Commands.LEAD)).thenRefused("return-not-allowed")
                .when(ask -> ask.decide(1, Disposition.REWORK, Commands.LEAD)).thenRefused("return-not-allowed")
                .when(ask -> new TravellerCommand.Decide(ask.by(Commands.INSPECTOR), 1, Disposition.USE_AS_IS,
                        Optional.of(new StepId("pickle")), "why", Commands.INSPECTOR)).thenRefused("return-not-allowed")
                .when(ask -> new TravellerCommand.Decide(ask.by(Commands.INSPECTOR), 1, Disposition.USE_AS_IS,
                        Optional.empty(), " ", Commands.INSPECTOR)).thenRefused("reason-missing")
                .when(ask -> ask.rework(1, "pickle", Commands.LEAD))
                .thenEvents(Dispositioned.class, ReturnedToStep.class);
    }

    @Test
    void a_rework_supersedes_and_every_signature_stays() {
        Shop shop = Shop.withLotAt("white-cloth").does(ask -> ask.start("white-cloth"))
                .does(ask -> ask.read("white-cloth", "cloth-clean", "0"))
                .when(ask -> ask.rework(1, "degrease", Commands.LEAD))
                .thenEvents(Dispositioned.class, WindowEnded.class, ReturnedToStep.class);
        Traveller back = shop.traveller();
        assertEquals(new StepId("degrease"), back.currentStep().orElseThrow());
        assertEquals(8, back.superseded().stream().filter(StepRun::isSigned).count());
        assertEquals(WindowEnd.RETURNED, shop.lastOf(WindowEnded.class).why());
        assertFalse(back.isInQuarantine());
        assertEquals(2, back.pass(new StepId("pickle")));
        shop.goesOnToTheEnd();
        assertEquals(2, shop.traveller().run(new StepId("pickle")).orElseThrow().pass());
    }

    @Test
    void a_return_to_the_opening_step_ends_the_window_and_a_later_one_does_not() {
        Shop shop = Shop.withLotAt("bagging").does(ask -> ask.start("bagging")).does(ask -> ask.report(1))
                .when(ask -> ask.rework(1, "wipe", Commands.LEAD))
                .thenEvents(Dispositioned.class, WindowEnded.class, ReturnedToStep.class);
        assertTrue(shop.traveller().window() instanceof Window.Ended);
        Shop.withLotAt("final-review").does(ask -> ask.report(1)).when(ask -> ask.rework(1, "weld", Commands.LEAD))
                .thenEvents(Dispositioned.class, ReturnedToStep.class);
    }

    @Test
    void a_return_behind_the_lock_makes_the_traveller_active_again() {
        Shop shop = Shop.withLotAt("final-review").does(ask -> ask.report(1));
        assertEquals(Phase.PASSED_IN, shop.traveller().phase());
        shop.does(ask -> ask.rework(1, "wipe", Commands.LEAD));
        assertEquals(Phase.ACTIVE, shop.traveller().phase());
        assertFalse(Readiness.missing(shop.traveller(), shop.procedure, shop.now()).isEmpty());
        shop.goesOnToTheEnd();
        assertEquals(2, shop.count(PassedIn.class));
        Shop inside = Shop.withLotAt("final-review").does(ask -> ask.report(1))
                .does(ask -> ask.rework(1, "weld", Commands.LEAD));
        assertEquals(Phase.PASSED_IN, inside.traveller().phase(), "a weld is done again inside");
    }

    @Test
    void a_rework_may_name_the_step_that_is_at_hand_after_an_earlier_return() {
        Shop.withLotAt("white-cloth").does(ask -> ask.start("white-cloth")).does(ask -> ask.report(1))
                .does(ask -> ask.report(2)).does(ask -> ask.rework(1, "wipe", Commands.LEAD))
                .when(ask -> ask.rework(2, "wipe", Commands.LEAD)).thenEvents(Dispositioned.class, ReturnedToStep.class)
                .goesOnToTheEnd();
    }

    @Test
    void an_inspector_rejects_pieces_with_a_signed_reason() {
        Shop shop = Shop.withLotAt("final-review").when(ask -> ask.reject("final-review", Commands.INSPECTOR, 3, 1, 3))
                .thenEvents(NonconformanceOpened.class);
        NonconformanceOpened opened = shop.lastOf(NonconformanceOpened.class);
        assertEquals(List.of(1, 3), opened.pieces());
        assertEquals(Meaning.REJECTED, opened.signature().orElseThrow().meaning());
        Shop.withLotAt("final-review").when(ask -> ask.reject("final-review", Commands.LEAD, 9))
                .thenRefused("role-missing", "no-stamp", "inspects-own-work", "no-such-pieces")
                .when(ask -> ask.reject("final-review", Commands.INSPECTOR)).thenRefused("no-such-pieces")
                .when(ask -> new TravellerCommand.RejectStep(ask.by(Commands.INSPECTOR), new StepId("final-review"),
                        Commands.INSPECTOR, List.of(1), "", List.of())).thenRefused("reason-missing");
    }

    @Test
    void reports_name_pieces_of_the_lot_and_say_something() {
        Shop.withLotAt("cut").when(ask -> ask.report(5)).thenRefused("no-such-pieces")
                .when(Commands::report).thenRefused("no-such-pieces")
                .when(ask -> new TravellerCommand.ReportNonconformance(ask.by(Commands.LEAD), List.of(1), ""))
                .thenRefused("reason-missing");
    }

    @Test
    void scrapped_pieces_leave_the_lot_and_the_rest_goes_on() {
        Shop shop = Shop.withLotAt("final-review").does(ask -> ask.report(2)).does(ask -> ask.report(2, 3))
                .does(ask -> ask.decide(1, Disposition.SCRAP, Commands.LEAD));
        assertEquals(List.of(1, 3, 4), shop.traveller().pieces());
        assertTrue(shop.traveller().isInQuarantine(), "the other one concerns a piece that is still here");
        shop.does(ask -> ask.decide(2, Disposition.USE_AS_IS, Commands.INSPECTOR)).goesOnToTheEnd();
    }

    @Test
    void a_scrap_settles_what_concerned_only_those_pieces() {
        Shop shop = Shop.withLotAt("final-review").does(ask -> ask.report(2)).does(ask -> ask.report(2, 3))
                .when(ask -> ask.decide(2, Disposition.SCRAP, Commands.LEAD))
                .thenEvents(Dispositioned.class, PiecesScrapped.class, Dispositioned.class);
        assertFalse(shop.traveller().isInQuarantine());
    }

    @Test
    void without_a_piece_left_the_traveller_is_scrapped_and_its_window_ends() {
        Shop shop = Shop.withLotAt("bagging").does(ask -> ask.report(1, 2, 3, 4))
                .when(ask -> ask.decide(1, Disposition.SCRAP, Commands.INSPECTOR))
                .thenEvents(Dispositioned.class, PiecesScrapped.class, WindowEnded.class);
        assertEquals(Phase.SCRAPPED, shop.traveller().phase());
        shop.passes(ofMinutes(1)).when(ask -> ask.start("bagging")).thenRefused("traveller-ended");
        assertEquals(WindowEnd.TRAVELLER_ENDED, shop.lastOf(WindowEnded.class).why());
    }

    @Test
    void numbers_rise_and_every_one_is_kept() {
        Shop shop = Shop.withLotAt("cut").does(ask -> ask.report(1)).does(ask -> ask.report(2))
                .does(ask -> ask.setApart("T-1042.1", 2)).does(ask -> ask.report(3));
        assertEquals(Map.of(1, true, 2, false, 3, true), shop.traveller().nonconformances().stream()
                .collect(java.util.stream.Collectors.toMap(Nonconformance::number, Nonconformance::isOpen)));
    }
}

package brightseam.traveller;

import static brightseam.procedure.BinClass.PROCESS_BASKET;
import static brightseam.procedure.BinClass.SHOP_BIN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.kernel.BinId;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import brightseam.procedure.BinClass;
import brightseam.traveller.TravellerCommand.BinFact;
import brightseam.traveller.TravellerCommand.StationFact;
import brightseam.traveller.TravellerEvent.*;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Who may begin, sign and stamp what, where and in which bin. */
class SignaturesTest {

    private static Shop inspected() {
        return Shop.withLotAt("dimension").does(ask -> ask.start("dimension"))
                .does(ask -> ask.read("dimension", "diameter", "25")).does(ask -> ask.read("dimension", "wall", "1.2"));
    }

    @Test
    void the_second_of_two_is_told_who_signed_and_when() {
        Shop shop = Shop.withLotAt("cut").does(ask -> ask.start("cut")).does(ask -> ask.read("cut", "length", "100"))
                .does(ask -> ask.sign("cut", Commands.FABRICATOR));
        var first = shop.now();
        shop.passes(java.time.Duration.ofSeconds(1)).when(ask -> ask.sign("cut", Commands.SECOND));
        assertEquals(List.of(new TravellerRefusal.AlreadySigned(new StepId("cut"), "Nils Oker", first)),
                shop.refusals());
        shop.when(ask -> ask.start("cut")).thenRefused("already-signed")
                .when(ask -> ask.read("cut", "length", "100")).thenRefused("already-signed", "reading-already-taken");
    }

    @Test
    void the_second_signature_under_the_lock_is_told_nothing_else() {
        Shop.withLotAt("weld").when(ask -> ask.sign("pass-in", Commands.LEAD)).thenRefused("already-signed");
    }

    @Test
    void the_second_stamp_under_the_last_step_is_told_who_was_first() {
        Shop.withLot().goesOnToTheEnd().when(ask -> ask.stamp("final-review", Commands.ALL_ROUND))
                .thenRefused("already-signed", "traveller-ended")
                .when(ask -> ask.sign("cut", Commands.FABRICATOR)).thenRefused("already-signed", "traveller-ended");
    }

    @Test
    void the_second_start_is_told_who_began() {
        Shop.withLotAt("cut").does(ask -> ask.start("cut"))
                .when(ask -> ask.start("cut")).thenRefused("already-started");
    }

    @Test
    void steps_go_in_their_order() {
        Shop.withLotAt("cut").when(ask -> ask.start("dimension")).thenRefused("not-this-step-yet")
                .when(ask -> ask.sign("dimension", Commands.FABRICATOR))
                .thenRefused("not-this-step-yet", "not-started", "signed-by-another-role")
                .when(ask -> ask.start("etch")).thenRefused("unknown-step")
                .when(ask -> ask.sign("etch", Commands.FABRICATOR)).thenRefused("unknown-step")
                .when(ask -> ask.stamp("etch", Commands.INSPECTOR)).thenRefused("unknown-step")
                .when(ask -> ask.reject("etch", Commands.INSPECTOR, 1)).thenRefused("unknown-step");
    }

    @Test
    void cautions_gloves_station_and_bin_are_asked_for_together() {
        Shop shop = Shop.withLotAt("degrease").goesOnTo("pickle")
                .when(ask -> ask.start("pickle", Optional.empty(), false, false))
                .thenRefused("no-station", "cautions-not-read", "gloves-not-on")
                .when(ask -> ask.start("pickle", Optional.of(new StationFact(new StationId("S-2"), "saw", true)),
                        true, true))
                .thenRefused("wrong-station", "station-out-of-use");
        shop.when(ask -> ask.start("pickle")).thenEvents(StepStarted.class);
    }

    @Test
    void a_step_begins_in_a_bin_of_its_classes() {
        Shop.withLot().when(ask -> ask.start("cut")).thenRefused("in-no-bin")
                .when(ask -> ask.put("B-1", PROCESS_BASKET)).thenRefused("wrong-bin-class")
                .when(ask -> new TravellerCommand.PutInBin(ask.by(Commands.FABRICATOR),
                        new BinFact(new BinId("B-1"), SHOP_BIN, true))).thenRefused("bin-is-closed")
                .when(ask -> ask.put("B-1", SHOP_BIN)).thenEvents(PutInBin.class)
                .when(ask -> ask.put("B-1", SHOP_BIN)).thenRefused("already-in-that-bin")
                .when(ask -> ask.start("cut")).thenEvents(StepStarted.class);
    }

    @Test
    void bins_open_and_close_in_turn() {
        Shop.withLot().when(Commands::close).thenRefused("in-no-bin").when(Commands::open).thenRefused("in-no-bin")
                .does(ask -> ask.put("B-1", SHOP_BIN)).when(Commands::open).thenRefused("bin-is-open")
                .when(Commands::close).thenEvents(BinClosed.class).when(Commands::close).thenRefused("bin-is-closed")
                .when(Commands::open).thenEvents(BinOpened.class);
    }

    @Test
    void a_bag_has_to_be_sealed_before_bagging_is_signed() {
        Shop.withLotAt("bagging").does(ask -> ask.start("bagging"))
                .when(ask -> ask.sign("bagging", Commands.FABRICATOR)).thenRefused("bin-not-closed")
                .does(Commands::close).when(ask -> ask.sign("bagging", Commands.FABRICATOR))
                .thenEvents(StepSigned.class);
    }

    @Test
    void a_fabricators_step_is_signed_by_a_fabricator_and_a_leads_by_a_lead() {
        Shop.withLotAt("cut").does(ask -> ask.start("cut")).does(ask -> ask.read("cut", "length", "100"))
                .when(ask -> ask.sign("cut", Commands.INSPECTOR)).thenRefused("role-missing")
                .when(ask -> ask.stamp("cut", Commands.INSPECTOR)).thenRefused("signed-by-another-role");
        Shop.withLotAt("pass-in").does(ask -> ask.start("pass-in"))
                .when(ask -> ask.sign("pass-in", Commands.FABRICATOR)).thenRefused("role-missing");
    }

    @Test
    void an_inspection_point_takes_only_an_inspectors_stamp() {
        inspected().when(ask -> ask.sign("dimension", Commands.LEAD)).thenRefused("signed-by-another-role")
                .when(ask -> ask.stamp("dimension", Commands.LEAD)).thenRefused("role-missing", "no-stamp")
                .when(ask -> ask.stamp("dimension", Commands.UNSTAMPED)).thenRefused("no-stamp")
                .when(ask -> ask.stamp("dimension", Commands.INSPECTOR)).thenEvents(StepStamped.class);
    }

    @Test
    void nobody_inspects_their_own_work() {
        Shop shop = Shop.withLotAt("cut").does(ask -> ask.start("cut"))
                .does(ask -> ask.read("cut", "length", "100")).does(ask -> ask.sign("cut", Commands.ALL_ROUND))
                .goesOnTo("dimension").does(ask -> ask.start("dimension"))
                .does(ask -> ask.read("dimension", "diameter", "25")).does(ask -> ask.read("dimension", "wall", "1.2"))
                .when(ask -> ask.stamp("dimension", Commands.ALL_ROUND)).thenRefused("inspects-own-work")
                .when(ask -> ask.reject("dimension", Commands.ALL_ROUND, 1)).thenRefused("inspects-own-work");
        shop.does(ask -> ask.stamp("dimension", Commands.INSPECTOR)).goesOnTo("final-review")
                .when(ask -> ask.stamp("final-review", Commands.ALL_ROUND))
                .thenEvents(StepStarted.class, StepStamped.class, Closed.class);
    }

    @Test
    void a_stamp_waits_for_the_readings_and_for_the_bin() {
        Shop.withLotAt("dimension").when(ask -> ask.stamp("dimension", Commands.INSPECTOR)).thenRefused("not-started")
                .does(ask -> ask.start("dimension"))
                .when(ask -> ask.stamp("dimension", Commands.INSPECTOR))
                .thenRefused("reading-missing", "reading-missing");
    }

    @Test
    void a_start_that_a_stamp_implies_claims_no_gloves_and_no_reading_of_cautions() {
        Shop shop = Shop.withLotAt("final-review").does(ask -> ask.stamp("final-review", Commands.INSPECTOR));
        StepStarted implied = shop.lastOf(StepStarted.class);
        assertTrue(implied.gloves().isEmpty());
        assertTrue(implied.cautionsRead(), "there are none");
    }

    @Test
    void a_refused_attempt_is_kept_with_its_evidence() {
        Shop shop = Shop.withLot().when(ask -> ask.put("B-1", PROCESS_BASKET));
        var refusals = shop.refusals();
        shop.when(ask -> new TravellerCommand.NoteRefusal(ask.by(Commands.FABRICATOR), "put-in-bin", refusals))
                .thenEvents(AttemptRefused.class);
        var rule = shop.lastOf(AttemptRefused.class).rules().getFirst();
        assertEquals("wrong-bin-class", rule.code());
        assertEquals("B-1", rule.evidence().get("bin"));
        assertEquals(BinClass.PROCESS_BASKET.name(), rule.evidence().get("binClass"));
        assertFalse(shop.traveller().isInQuarantine());
    }

    @Test
    void an_ended_traveller_refuses_everything_but_the_note_of_a_refusal() {
        Shop shop = Shop.withLot().goesOnToTheEnd();
        shop.when(ask -> ask.put("B-1", SHOP_BIN)).thenRefused("traveller-ended")
                .when(ask -> ask.report(1)).thenRefused("traveller-ended")
                .when(ask -> ask.correct("cut", "length", "100", Commands.LEAD)).thenRefused("traveller-ended")
                .when(ask -> ask.setApart("T-1042.1", 1)).thenRefused("traveller-ended")
                .passes(java.time.Duration.ofDays(30)).when(Commands::watch).thenEvents();
        var refusals = shop.when(ask -> ask.report(1)).refusals();
        shop.when(ask -> new TravellerCommand.NoteRefusal(ask.by(Commands.LEAD), "report", refusals))
                .thenEvents(AttemptRefused.class);
    }
}

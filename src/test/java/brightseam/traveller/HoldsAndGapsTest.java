package brightseam.traveller;

import static java.time.Duration.ofHours;
import static java.time.Duration.ofMillis;
import static java.time.Duration.ofMinutes;
import static java.time.Duration.ofSeconds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import brightseam.kernel.Origin;
import brightseam.kernel.StepId;
import brightseam.procedure.BinClass;
import brightseam.traveller.TravellerEvent.*;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Holds, overruns and gaps. The pickle holds 1 to 3 minutes; its rinse has to begin within 60 seconds. */
class HoldsAndGapsTest {

    private static Shop pickling() {
        return Shop.withLotAt("pickle").does(ask -> ask.start("pickle"))
                .does(ask -> ask.read("pickle", "acid-temperature", "30")).does(ask -> ask.beginHold("pickle"));
    }

    @Test
    void a_hold_does_not_end_a_millisecond_before_its_minimum() {
        pickling().passes(ofMinutes(1).minusMillis(1))
                .when(ask -> ask.endHold("pickle")).thenRefused("hold-not-elapsed")
                .passes(ofMillis(1)).when(ask -> ask.endHold("pickle")).thenEvents(HoldEnded.class);
    }

    @Test
    void a_refused_end_says_when_the_earliest_end_is() {
        Shop shop = pickling();
        var earliest = shop.now().plus(ofMinutes(1));
        var refusal = assertInstanceOf(TravellerRefusal.HoldNotElapsed.class, shop.passes(ofSeconds(20))
                .when(ask -> ask.endHold("pickle")).refusals().getFirst());
        assertEquals(earliest, refusal.earliestEnd());
        assertEquals(shop.now(), refusal.attemptedAt());
    }

    @Test
    void pieces_that_must_come_out_early_come_out_into_quarantine_and_are_still_rinsed() {
        pickling().passes(ofSeconds(10)).when(ask -> ask.cutHoldShort("pickle"))
                .thenEvents(NonconformanceOpened.class, HoldEnded.class)
                .when(ask -> ask.start("acid-rinse")).thenEvents(StepStarted.class, HoldBegun.class);
    }

    @Test
    void a_hold_cut_short_is_never_waived_but_done_again() {
        Shop shop = pickling().passes(ofSeconds(10)).does(ask -> ask.cutHoldShort("pickle"))
                .does(ask -> ask.start("acid-rinse")).passes(ofMinutes(5)).does(ask -> ask.endHold("acid-rinse"));
        shop.when(ask -> ask.decide(1, Disposition.USE_AS_IS, Commands.INSPECTOR)).thenRefused("hold-cannot-be-waived")
                .when(ask -> ask.decide(1, Disposition.REPAIR, Commands.INSPECTOR))
                .thenRefused("hold-cannot-be-waived")
                .when(ask -> ask.sign("pickle", Commands.FABRICATOR))
                .thenRefused("in-quarantine", "hold-not-elapsed")
                .when(ask -> ask.rework(1, "pickle", Commands.LEAD))
                .thenEvents(Dispositioned.class, ReturnedToStep.class);
    }

    @Test
    void nothing_is_cut_short_after_the_minimum_or_without_a_reason() {
        pickling().passes(ofMinutes(1)).when(ask -> ask.cutHoldShort("pickle")).thenRefused("hold-long-enough");
        pickling().when(ask -> new TravellerCommand.CutHoldShort(
                ask.by(Commands.FABRICATOR), new StepId("pickle"), " ")).thenRefused("reason-missing");
    }

    @Test
    void exactly_the_maximum_is_in_order() {
        pickling().passes(ofMinutes(3)).when(ask -> ask.endHold("pickle")).thenEvents(HoldEnded.class);
    }

    @Test
    void a_longer_hold_opens_a_nonconformance_when_it_is_ended() {
        Shop shop = pickling().passes(ofMinutes(3).plusMillis(1)).when(ask -> ask.endHold("pickle"))
                .thenEvents(NonconformanceOpened.class, HoldEnded.class);
        NonconformanceOpened opened = shop.lastOf(NonconformanceOpened.class);
        assertEquals(Nonconformance.Cause.HOLD_OVERRUN, opened.cause());
        assertEquals(Origin.SHOP, opened.by());
        assertEquals(shop.traveller().pieces(), opened.pieces());
    }

    @Test
    void the_watch_notices_an_overrun_by_itself_and_once() {
        pickling().passes(ofMinutes(4)).when(Commands::watch).thenEvents(NonconformanceOpened.class)
                .passes(ofMinutes(1)).when(Commands::watch).thenEvents()
                .when(ask -> ask.endHold("pickle")).thenEvents(HoldEnded.class);
    }

    @Test
    void an_overrun_pickle_is_lifted_out_and_rinsed_in_quarantine_but_not_signed() {
        pickling().passes(ofMinutes(4)).does(Commands::watch).does(ask -> ask.endHold("pickle"))
                .when(ask -> ask.start("acid-rinse")).thenEvents(StepStarted.class, HoldBegun.class)
                .passes(ofMinutes(2)).when(ask -> ask.endHold("acid-rinse")).thenEvents(HoldEnded.class)
                .when(ask -> ask.sign("pickle", Commands.FABRICATOR)).thenRefused("in-quarantine")
                .when(ask -> ask.start("di-rinse")).thenRefused("not-this-step-yet", "in-quarantine")
                .does(ask -> ask.decide(1, Disposition.USE_AS_IS, Commands.INSPECTOR))
                .when(ask -> ask.sign("pickle", Commands.FABRICATOR)).thenEvents(StepSigned.class)
                .when(ask -> ask.sign("acid-rinse", Commands.FABRICATOR)).thenEvents(StepSigned.class);
    }

    @Test
    void a_second_passage_that_overruns_too_opens_another() {
        Shop shop = pickling().passes(ofMinutes(4)).does(ask -> ask.endHold("pickle"))
                .does(ask -> ask.start("acid-rinse")).passes(ofMinutes(2)).does(ask -> ask.endHold("acid-rinse"))
                .does(ask -> ask.rework(1, "pickle", Commands.LEAD)).goesOnTo("pickle")
                .does(ask -> ask.start("pickle")).does(ask -> ask.read("pickle", "acid-temperature", "30"))
                .does(ask -> ask.beginHold("pickle")).passes(ofMinutes(5));
        shop.when(Commands::watch).thenEvents(NonconformanceOpened.class);
        assertEquals(2, shop.lastOf(NonconformanceOpened.class).pass());
    }

    @Test
    void a_gap_may_last_to_its_last_millisecond() {
        pickling().passes(ofMinutes(2)).does(ask -> ask.endHold("pickle")).passes(ofSeconds(60))
                .when(ask -> ask.start("acid-rinse")).thenEvents(StepStarted.class, HoldBegun.class);
    }

    @Test
    void a_missed_gap_opens_a_nonconformance_and_the_rinse_may_still_begin() {
        pickling().passes(ofMinutes(2)).does(ask -> ask.endHold("pickle")).passes(ofSeconds(60).plusMillis(1))
                .when(ask -> ask.start("acid-rinse"))
                .thenEvents(NonconformanceOpened.class, StepStarted.class, HoldBegun.class);
    }

    @Test
    void the_watch_notices_a_missed_gap_once() {
        Shop shop = pickling().passes(ofMinutes(2)).does(ask -> ask.endHold("pickle")).passes(ofMinutes(2))
                .when(Commands::watch).thenEvents(NonconformanceOpened.class).when(Commands::watch).thenEvents();
        assertEquals(Nonconformance.Cause.GAP_EXCEEDED, shop.lastOf(NonconformanceOpened.class).cause());
    }

    @Test
    void a_gap_that_ends_in_a_reading_before_the_hold_runs_until_the_hold_begins() {
        Shop.withLotAt("pickle").does(ask -> ask.start("pickle")).passes(ofMinutes(6))
                .when(ask -> ask.read("pickle", "acid-temperature", "30"))
                .thenEvents(NonconformanceOpened.class, ReadingTaken.class)
                .when(ask -> ask.beginHold("pickle")).thenRefused("in-quarantine")
                .does(ask -> ask.decide(1, Disposition.USE_AS_IS, Commands.INSPECTOR))
                .when(ask -> ask.beginHold("pickle")).thenEvents(HoldBegun.class);
    }

    @Test
    void a_gap_never_leads_a_quarantined_lot_into_the_next_bath_and_its_rework_is_not_held_up_by_it() {
        Shop shop = Shop.withLotAt("pickle").does(ask -> ask.report(1));
        assertInstanceOf(NextAction.AwaitDisposition.class, Guide.next(shop.traveller(), shop.procedure));
        shop.when(ask -> ask.start("pickle")).thenRefused("in-quarantine")
                .when(ask -> ask.rework(1, "degrease", Commands.LEAD))
                .thenEvents(Dispositioned.class, ReturnedToStep.class);
    }

    @Test
    void a_gap_that_quarantine_held_up_is_noted_once_the_disposition_lets_the_lot_go_on() {
        Shop shop = Shop.withLotAt("pickle").does(ask -> ask.report(1)).passes(ofMinutes(6))
                .when(Commands::watch).thenEvents()
                .does(ask -> ask.decide(1, Disposition.USE_AS_IS, Commands.INSPECTOR))
                .when(Commands::watch).thenEvents(NonconformanceOpened.class);
        assertEquals(Nonconformance.Cause.GAP_EXCEEDED, shop.lastOf(NonconformanceOpened.class).cause());
    }

    @Test
    void overrun_and_missed_gap_are_two_nonconformances() {
        Shop shop = pickling().passes(ofMinutes(4)).does(ask -> ask.endHold("pickle")).passes(ofMinutes(4))
                .does(Commands::watch);
        assertEquals(2, shop.traveller().openNonconformances().size());
    }

    @Test
    void a_return_to_the_rinse_finds_no_old_gap_missed() {
        Shop shop = pickling().goesOnTo("water-break").does(ask -> ask.report(1)).passes(ofHours(1));
        shop.given(List.of(new ReturnedToStep(shop.ask.by(Commands.LEAD),
                new StepId("acid-rinse"), "again", List.of(
                        new StepId("acid-rinse"), new StepId("di-rinse")))));
        shop.when(Commands::watch).thenEvents();
    }

    @Test
    void nothing_is_parted_moved_or_decided_while_the_pieces_are_in_the_bath() {
        pickling().does(ask -> ask.report(1))
                .when(ask -> ask.setApart("T-1042.1", 1)).thenRefused("hold-still-running")
                .when(ask -> ask.put("B-9", BinClass.PROCESS_BASKET))
                .thenRefused("hold-still-running")
                .when(ask -> ask.rework(1, "degrease", Commands.LEAD)).thenRefused("hold-still-running");
    }

    @Test
    void wet_from_the_acid_the_pieces_are_rinsed_before_a_rework_returns_them() {
        pickling().passes(ofMinutes(4)).does(ask -> ask.endHold("pickle"))
                .when(ask -> ask.rework(1, "degrease", Commands.LEAD)).thenRefused("not-this-step-yet")
                .does(ask -> ask.start("acid-rinse")).passes(ofMinutes(2)).does(ask -> ask.endHold("acid-rinse"))
                .when(ask -> ask.rework(1, "degrease", Commands.LEAD))
                .thenEvents(Dispositioned.class, ReturnedToStep.class);
    }

    @Test
    void a_hold_is_begun_and_ended_once() {
        pickling().when(ask -> ask.beginHold("pickle")).thenRefused("hold-already-begun")
                .when(ask -> ask.sign("pickle", Commands.FABRICATOR)).thenRefused("hold-still-running")
                .passes(ofMinutes(2)).does(ask -> ask.endHold("pickle"))
                .when(ask -> ask.endHold("pickle")).thenRefused("hold-already-ended");
    }

    @Test
    void a_hold_that_was_never_begun_is_neither_ended_nor_signed_over() {
        Shop.withLotAt("pickle").when(ask -> ask.endHold("pickle")).thenRefused("not-started")
                .does(ask -> ask.start("pickle"))
                .when(ask -> ask.endHold("pickle")).thenRefused("hold-not-begun")
                .when(ask -> ask.sign("pickle", Commands.FABRICATOR)).thenRefused("hold-not-begun", "reading-missing");
    }

    @Test
    void a_step_without_a_hold_has_none_to_begin_or_end() {
        Shop.withLotAt("cut").does(ask -> ask.start("cut")).when(ask -> ask.beginHold("cut")).thenRefused("no-hold")
                .when(ask -> ask.endHold("cut")).thenRefused("no-hold");
    }

    @Test
    void a_wall_clock_that_is_set_changes_no_decision() {
        pickling().wallClockIsSet(ofHours(5)).when(ask -> ask.endHold("pickle")).thenRefused("hold-not-elapsed")
                .wallClockIsSet(ofHours(-9)).passes(ofMinutes(2)).when(ask -> ask.endHold("pickle"))
                .thenEvents(HoldEnded.class)
                .wallClockIsSet(ofHours(3)).passes(ofSeconds(30)).when(Commands::watch).thenEvents()
                .wallClockIsSet(ofHours(-24)).passes(ofSeconds(31)).when(Commands::watch)
                .thenEvents(NonconformanceOpened.class);
    }
}

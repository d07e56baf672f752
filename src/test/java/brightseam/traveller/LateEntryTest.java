package brightseam.traveller;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.kernel.StepId;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A step that was done before anybody could write it down. */
class LateEntryTest {

    private static final Duration HOUR = Duration.ofHours(1);

    private static Shop released() {
        return Shop.withLotAt("cut").passes(Duration.ofHours(5));
    }

    @Test
    void a_late_entry_begins_the_step_and_keeps_both_times_and_who_stated_the_earlier_one() {
        Shop shop = released().does(ask -> ask.enterLate("cut", HOUR, Commands.FABRICATOR))
                .thenEvents(TravellerEvent.StepStarted.class, TravellerEvent.StepEnteredLate.class);
        StepRun run = shop.traveller().run(new StepId("cut")).orElseThrow();
        assertEquals(shop.now(), run.startedAt());
        assertEquals(new StepRun.Late(shop.now().wall().minus(HOUR), "no network", Commands.FABRICATOR.badge()),
                run.late().orElseThrow());
        Signature mark = shop.lastOf(TravellerEvent.StepEnteredLate.class).signature();
        assertEquals(Meaning.STATED_LATE, mark.meaning());
        assertTrue(mark.content().isPresent());
    }

    @Test
    void readings_and_the_signature_follow_as_for_every_step() {
        released().does(ask -> ask.enterLate("cut", HOUR, Commands.FABRICATOR))
                .when(ask -> ask.sign("cut", Commands.FABRICATOR)).thenRefused("reading-missing")
                .does(ask -> ask.read("cut", "length", "100")).does(ask -> ask.sign("cut", Commands.FABRICATOR))
                .thenEvents(TravellerEvent.StepSigned.class);
    }

    @Test
    void a_hold_that_nobody_observed_is_not_invented() {
        Shop.withLotAt("first-rinse").passes(Duration.ofMinutes(3))
                .when(ask -> ask.enterLate("first-rinse", Duration.ofMinutes(1), Commands.FABRICATOR))
                .thenRefused("late-hold");
    }

    @Test
    void an_inspection_point_and_the_step_that_opens_the_clean_window_are_not_entered_late() {
        Shop.withLotAt("dimension").when(ask -> ask.enterLate("dimension", Duration.ZERO, Commands.ALL_ROUND))
                .thenRefused("late-inspection");
        Shop.withLotAt("wipe").when(ask -> ask.enterLate("wipe", Duration.ZERO, Commands.FABRICATOR))
                .thenRefused("late-window");
    }

    @Test
    void a_time_to_come_is_refused() {
        released().when(ask -> ask.enterLate("cut", Duration.ofMinutes(-1), Commands.FABRICATOR))
                .thenRefused("late-in-future");
    }

    @Test
    void a_time_before_the_release_or_before_the_step_before_is_refused() {
        released().when(ask -> ask.enterLate("cut", Duration.ofHours(9), Commands.FABRICATOR))
                .thenRefused("late-before-previous");
        Shop.withLotAt("water-break").passes(HOUR)
                .when(ask -> ask.enterLate("water-break", Duration.ofHours(2), Commands.FABRICATOR))
                .thenRefused("late-before-previous")
                .does(ask -> ask.enterLate("water-break", Duration.ofMinutes(30), Commands.FABRICATOR));
    }

    @Test
    void after_a_late_entry_the_next_one_is_measured_against_the_stated_time() {
        Shop shop = Shop.withLot(Steps.named("TUBE").without("dimension").changed("degrease", Steps.held(0, null))
                .procedure()).goesOnTo("cut").passes(Duration.ofHours(5));
        shop.does(ask -> ask.enterLate("cut", Duration.ofHours(2), Commands.FABRICATOR));
        assertEquals(shop.now().wall().minus(Duration.ofHours(2)),
                shop.traveller().run(new StepId("cut")).flatMap(StepRun::late).orElseThrow().doneAt());
    }

    @Test
    void a_gap_behind_it_was_not_observed_either_and_waits_in_quarantine_for_an_inspector() {
        Shop shop = Shop.withLot(Steps.named("TUBE").changed("white-cloth", Steps.gap(600)).procedure())
                .goesOnTo("white-cloth").passes(Duration.ofMinutes(5))
                .does(ask -> ask.enterLate("white-cloth", Duration.ofMinutes(2), Commands.FABRICATOR))
                .thenEvents(TravellerEvent.StepStarted.class, TravellerEvent.StepEnteredLate.class,
                        TravellerEvent.NonconformanceOpened.class);
        assertEquals(Nonconformance.Cause.TIME_NOT_OBSERVED,
                shop.lastOf(TravellerEvent.NonconformanceOpened.class).cause());
        shop.does(ask -> ask.read("white-cloth", "cloth-clean", "1"))
                .when(ask -> ask.sign("white-cloth", Commands.FABRICATOR)).thenRefused("in-quarantine")
                .does(ask -> ask.decide(1, Disposition.USE_AS_IS, Commands.INSPECTOR))
                .does(ask -> ask.sign("white-cloth", Commands.FABRICATOR));
    }

    @Test
    void a_missed_gap_before_it_is_not_met_by_what_somebody_states() {
        Shop shop = Shop.withLot(Steps.named("TUBE").changed("dry", Steps.gap(60)).changed("wipe", step -> step)
                .procedure()).goesOnTo("wipe");
        shop.passes(Duration.ofMinutes(5));
        assertEquals(List.of("in-quarantine"), shop.when(ask -> ask.enterLate(
                "wipe", Duration.ofMinutes(4), Commands.FABRICATOR)).refusals().stream()
                .map(brightseam.kernel.Refusal::code).filter("in-quarantine"::equals).toList());
    }

    @Test
    void it_asks_for_everything_that_a_start_asks_for_and_for_a_reason_and_the_right_signer() {
        released().when(ask -> ask.enterLate("cut", HOUR, " ", Commands.INSPECTOR))
                .thenRefused("reason-missing", "role-missing")
                .when(ask -> ask.enterLate("degrease", HOUR, Commands.FABRICATOR))
                .thenRefused("not-this-step-yet", "wrong-bin-class")
                .does(ask -> ask.start("cut"))
                .when(ask -> ask.enterLate("cut", HOUR, Commands.FABRICATOR)).thenRefused("already-started");
    }

    @Test
    void only_steps_that_can_be_entered_late_are_offered_for_it() {
        List<String> offered = TestProcedures.tube().steps().stream()
                .filter(step -> Guide.mayBeLate(TestProcedures.tube(), step)).map(step -> step.id().value()).toList();
        assertEquals(List.of("cut", "water-break", "white-cloth", "bagging", "pass-in", "weld"), offered);
    }
}

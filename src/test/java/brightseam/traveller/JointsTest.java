package brightseam.traveller;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.kernel.StepId;
import brightseam.traveller.Nonconformance.Cause;
import brightseam.traveller.TravellerEvent.*;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Joints in a traveller's record: arcs, what the meters proved, what the inspector saw. */
class JointsTest {

    @Test
    void the_first_arc_begins_the_weld_step_and_the_next_one_does_not() {
        Shop shop = at("weld");
        shop.when(ask -> Inside.arc(ask, "J03", 1)).thenEvents(StepStarted.class, ArcBegun.class);
        assertEquals(Inside.CHAMBER, shop.traveller().run(new StepId("weld")).orElseThrow().station().orElseThrow());
        shop.when(ask -> Inside.arc(ask, "J04", 1)).thenEvents(ArcBegun.class);
        shop.passes(Duration.ofSeconds(20)).when(ask -> Inside.good(ask, "J03", 1)).thenEvents(JointWelded.class);
    }

    @Test
    void what_was_proven_to_the_end_of_the_arc_is_followed_by_what_was_proven_while_it_cooled() {
        Shop shop = arced().passes(Duration.ofSeconds(20)).does(ask -> Inside.good(ask, "J03", 1));
        shop.when(ask -> Inside.exceeded(ask, "J03", 1)).thenEvents();
        shop.passes(Duration.ofMinutes(1)).when(ask -> Inside.exceeded(ask, "J03", 1))
                .thenEvents(JointWelded.class, NonconformanceOpened.class);
    }

    @Test
    void no_arc_begins_before_the_lock_after_the_signature_or_on_pieces_that_are_not_there() {
        at("pass-in").when(ask -> Inside.arc(ask, "J03", 1)).thenRefused("not-this-step-yet");
        at("weld-inspection").when(ask -> Inside.arc(ask, "J03", 2)).thenRefused("already-signed");
        at("weld").when(ask -> Inside.arc(ask, "J03", 1, 5)).thenRefused("no-such-pieces");
    }

    @Test
    void oxygen_over_the_limit_opens_a_nonconformance_that_names_joint_and_seconds() {
        Shop shop = arced(1, 2).when(ask -> Inside.exceeded(ask, "J03", 1, 1, 2));
        shop.thenEvents(JointWelded.class, NonconformanceOpened.class);
        NonconformanceOpened opened = shop.lastOf(NonconformanceOpened.class);
        assertEquals(Cause.JOINT_EXCURSION, opened.cause());
        assertEquals(List.of(1, 2), opened.pieces());
        assertEquals("K-07.J03, run 1: oxygen above 30.0 ppm for 4.0 s, highest 48.0 ppm; from 6.0 s to 10.0 s"
                + " (48.0 ppm) after the arc began", opened.text());
    }

    @Test
    void a_stretch_without_a_reading_opens_one_of_its_own() {
        Shop shop = arced(1).when(ask -> Inside.unproven(ask, "J03", 1, 1));
        NonconformanceOpened opened = shop.lastOf(NonconformanceOpened.class);
        assertEquals(Cause.JOINT_UNPROVEN, opened.cause());
        assertEquals("K-07.J03, run 1: no usable oxygen reading for 3.0 s; from 10.0 s to 13.0 s after the arc began",
                opened.text());
    }

    @Test
    void both_at_once_are_two() {
        Shop shop = arced().when(ask -> Inside.note(ask, "J03", 1, "2.0", List.of(), List.of(), false));
        shop.thenEvents(JointWelded.class, NonconformanceOpened.class, NonconformanceOpened.class);
        assertEquals(List.of(1, 2), shop.traveller().openNonconformances().stream()
                .map(Nonconformance::number).toList());
        assertTrue(shop.lastOf(NonconformanceOpened.class).text().endsWith("no usable oxygen reading over the whole"
                + " time"));
    }

    @Test
    void in_quarantine_no_arc_begins_but_what_was_hot_is_written_down() {
        Shop shop = arced().does(ask -> ask.report(3));
        shop.passes(Duration.ofSeconds(5)).when(ask -> Inside.exceeded(ask, "J03", 1))
                .thenEvents(JointWelded.class, NonconformanceOpened.class);
        shop.when(ask -> Inside.arc(ask, "J04", 1)).thenRefused("in-quarantine");
        shop.when(ask -> Inside.sign(ask, Commands.FABRICATOR)).thenRefused("in-quarantine");
    }

    @Test
    void the_same_run_is_written_down_once_and_a_scrapped_lot_learns_of_it_too() {
        Shop shop = arced().does(ask -> Inside.good(ask, "J03", 1));
        shop.when(ask -> Inside.exceeded(ask, "J03", 1)).thenEvents();
        Shop gone = arced().does(ask -> ask.report(1, 2, 3, 4))
                .does(ask -> ask.decide(1, Disposition.SCRAP, Commands.LEAD));
        gone.when(ask -> Inside.exceeded(ask, "J03", 1)).thenEvents(JointWelded.class);
    }

    @Test
    void a_joint_is_welded_again_where_that_is_decided_while_the_window_is_open() {
        Shop shop = arced().does(ask -> Inside.exceeded(ask, "J03", 1));
        assertEquals(List.of(new StepId("wipe"), new StepId("weld")), returns(shop));
        shop.does(ask -> ask.rework(1, "weld", Commands.LEAD));
        assertEquals(Phase.PASSED_IN, shop.traveller().phase());
        shop.when(ask -> Inside.arc(ask, "J03", 2)).thenEvents(StepStarted.class, ArcBegun.class);
        assertEquals(2, shop.lastOf(ArcBegun.class).pass());
        shop.passes(Duration.ofSeconds(20)).does(ask -> Inside.good(ask, "J03", 2))
                .does(ask -> Inside.sign(ask, Commands.FABRICATOR));
    }

    @Test
    void behind_the_signature_a_rejected_joint_goes_back_to_be_cleaned_first() {
        Shop shop = at("weld-inspection").passes(Duration.ofHours(1));
        shop.when(ask -> Inside.judged(ask, "J03", 1, Commands.INSPECTOR, false))
                .thenEvents(JointJudged.class, NonconformanceOpened.class);
        NonconformanceOpened opened = shop.lastOf(NonconformanceOpened.class);
        assertEquals(new StepId("weld-inspection"), opened.step());
        assertEquals("K-07.J03, run 1: dark blue; undercut 0.2 mm, by Workshop specification HDF-W-3, revision 2."
                + " Repair once, then ask the lead", opened.text());
        assertEquals(List.of(new StepId("wipe")), returns(shop));
        shop.when(ask -> ask.rework(1, "weld", Commands.LEAD)).thenRefused("return-not-allowed");
        shop.does(ask -> ask.rework(1, "wipe", Commands.LEAD)).goesOnTo("weld")
                .when(ask -> Inside.arc(ask, "J03", 2)).thenEvents(StepStarted.class, ArcBegun.class);
    }

    @Test
    void a_joint_is_judged_by_a_stamped_inspector_who_did_not_weld_it() {
        Shop shop = at("weld-inspection");
        shop.when(ask -> Inside.judged(ask, "J03", 1, Commands.LEAD, true)).thenRefused("role-missing", "no-stamp");
        shop.when(ask -> Inside.judged(ask, "J03", 1, Commands.UNSTAMPED, true)).thenRefused("no-stamp");
        shop.when(ask -> Inside.judged(ask, "J03", 1, Commands.INSPECTOR, true)).thenEvents(JointJudged.class);
        arced().when(ask -> Inside.judged(ask, "J03", 1, Commands.INSPECTOR, true)).thenRefused("arc-still-burning");
    }

    @Test
    void pieces_that_are_set_apart_take_their_joints_with_them() {
        Shop shop = arced(1, 2).does(ask -> Inside.good(ask, "J03", 1, 1, 2))
                .does(ask -> Inside.arc(ask, "J04", 1, 3, 4));
        shop.when(ask -> ask.setApart("T-1042.1", 1)).thenRefused("arc-still-burning");
        shop.does(ask -> Inside.good(ask, "J04", 1, 3, 4)).does(ask -> ask.setApart("T-1042.1", 1));
        assertEquals(List.of(Inside.joint("J03")), joints(shop.child().traveller()));
        assertEquals(List.of(Inside.joint("J03"), Inside.joint("J04")), joints(shop.traveller()));
        shop.does(ask -> ask.setApart("T-1042.2", 2));
        assertEquals(List.of(Inside.joint("J04")), joints(shop.traveller()));
    }

    private static List<brightseam.kernel.JointId> joints(Traveller traveller) {
        return traveller.arcs().stream().map(ArcRun::joint).toList();
    }

    private static List<StepId> returns(Shop shop) {
        return Guide.returns(shop.traveller(), shop.procedure, shop.traveller().openNonconformances().getFirst());
    }

    private static Shop arced(Integer... pieces) {
        return at("weld").does(ask -> Inside.arc(ask, "J03", 1, pieces)).passes(Duration.ofSeconds(20));
    }

    private static Shop at(String step) {
        return Shop.withLot(TestProcedures.welded()).goesOnTo(step);
    }
}

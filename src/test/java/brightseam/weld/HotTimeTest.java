package brightseam.weld;

import static brightseam.weld.Weld.JOINT;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.weld.Joint.Owed;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HotTimeTest {

    private final Weld weld = new Weld();

    @Test
    void the_cooling_hold_runs_from_the_end_of_the_arc() {
        weld.starts(ArcPurpose.WELD).passes(60);
        assertEquals(JointStanding.ARC_RUNNING, weld.state().standing(weld.now()));
        assertEquals(Optional.empty(), weld.state().coolAt());
        weld.stops();
        assertEquals(weld.now().plus(Duration.ofMinutes(10)), weld.state().coolAt().orElseThrow());
        assertTrue(weld.passes(599).state().isHot(weld.now()));
        assertEquals(JointStanding.COOLING, weld.state().standing(weld.now()));
        assertFalse(weld.passes(1).state().isHot(weld.now()));
        assertEquals(JointStanding.SETTLING, weld.state().standing(weld.now()));
        assertEquals(JointStanding.WELDED, weld.proves().state().standing(weld.now()));
    }

    @Test
    void readings_are_owed_for_the_arc_and_then_for_the_cooling() {
        var begun = weld.starts(ArcPurpose.WELD).now();
        assertEquals(List.of(), weld.state().owed(weld.now()));
        var stopped = weld.passes(60).stops().now();
        assertEquals(List.of(new Owed(1, HotStretch.ARC, begun, stopped)), weld.state().owed(weld.now()));
        weld.proves();
        assertEquals(List.of(), weld.passes(599).state().owed(weld.now()));
        assertEquals(List.of(new Owed(1, HotStretch.COOLING, stopped, stopped.plus(Duration.ofMinutes(10)))),
                weld.passes(1).state().owed(weld.now()));
        assertEquals(List.of(), weld.proves().state().owed(weld.now()));
    }

    @Test
    void an_arc_on_a_joint_that_is_still_hot_is_proven_from_the_end_of_the_arc_before() {
        var first = weld.starts(ArcPurpose.TACK).passes(5).stops().now();
        var begun = weld.passes(120).starts(ArcPurpose.WELD).now();
        var stopped = weld.passes(60).stops().now();
        assertEquals(first, weld.state().lastArc().orElseThrow().hotFrom());
        assertEquals(begun, weld.state().lastArc().orElseThrow().startedAt());
        assertEquals(List.of(HotStretch.ARC, HotStretch.ARC, HotStretch.COOLING),
                weld.passes(700).state().owed(weld.now()).stream().map(Owed::stretch).toList());
        assertEquals(new Owed(2, HotStretch.ARC, first, stopped), weld.state().owed(weld.now()).get(1));
    }

    @Test
    void an_arc_on_a_joint_that_has_cooled_is_proven_from_its_own_beginning() {
        weld.starts(ArcPurpose.TACK).passes(5).stops().passes(700).starts(ArcPurpose.WELD);
        assertEquals(weld.now(), weld.state().lastArc().orElseThrow().hotFrom());
    }

    @Test
    void evidence_is_taken_once_and_only_of_what_has_ended() {
        weld.starts(ArcPurpose.WELD);
        JointCommand early = new JointCommand.TakeEvidence(JOINT, 1, HotStretch.ARC, Weld.clean(), weld.origin());
        assertEquals(List.of("joint-evidence-not-owed"), weld.refused(early));
        weld.passes(9).stops().proves();
        assertEquals(List.of("joint-evidence-not-owed"), weld.refused(early));
        assertEquals(List.of("joint-evidence-not-owed"), new Weld().refused(early));
    }

    @Test
    void a_joint_is_doubtful_where_the_gas_is_not_proven() {
        weld.starts(ArcPurpose.WELD).passes(60).stops();
        weld.does(new JointCommand.TakeEvidence(
                JOINT, 1, HotStretch.ARC, Weld.evidence(false, List.of()), weld.origin()));
        assertTrue(weld.state().isDoubtful());
        assertFalse(new Weld().welded().state().isDoubtful());
    }

    @Test
    void an_arc_is_stopped_once_by_whoever_is_there() {
        weld.starts(ArcPurpose.WELD).passes(9).stops();
        assertEquals(List.of("joint-no-arc-running"), weld.refused(new JointCommand.StopArc(JOINT, weld.origin())));
        assertEquals(List.of("joint-no-arc-running"),
                new Weld().refused(new JointCommand.StopArc(JOINT, weld.origin())));
    }

    @Test
    void tacks_alone_are_no_weld() {
        weld.starts(ArcPurpose.TACK).passes(3).stops().passes(700).proves();
        assertEquals(JointStanding.TACKED, weld.state().standing(weld.now()));
    }

    @Test
    void a_joint_that_needs_no_cooling_owes_none() {
        MapJoint plan = Weld.plan(JointClass.C, new Cooling(Duration.ZERO, "nothing", "of the test"));
        weld.starts(ArcPurpose.WELD, plan).passes(60).stops().proves();
        assertEquals(List.of(), weld.state().owed(weld.now()));
        assertEquals(JointStanding.WELDED, weld.state().standing(weld.now()));
    }

    @Test
    void a_cooling_that_had_ended_when_the_next_arc_began_is_still_looked_at() {
        weld.starts(ArcPurpose.TACK).passes(5).stops().passes(700).starts(ArcPurpose.WELD).passes(60).stops();
        assertEquals(List.of(HotStretch.ARC, HotStretch.COOLING, HotStretch.ARC),
                weld.state().owed(weld.now()).stream().map(Owed::stretch).toList());
        assertFalse(weld.proves().state().isSettled());
        assertTrue(weld.passes(600).proves().state().isSettled());
    }
}

package brightseam.lineplan.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.kernel.BadgeId;
import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.StationId;
import brightseam.lineplan.Aim;
import brightseam.lineplan.Layout;
import brightseam.lineplan.LineLoad;
import brightseam.lineplan.LineProblems;
import brightseam.lineplan.LineSituation;
import brightseam.lineplan.LineStation;
import brightseam.lineplan.Move;
import brightseam.lineplan.Place;
import brightseam.lineplan.PlanStanding;
import brightseam.lineplan.Working;
import brightseam.planner.Answer;
import brightseam.planner.Demand;
import brightseam.planner.Plan;
import brightseam.planner.PlanChecker;
import brightseam.planner.Schedule;
import brightseam.planner.shell.PlanSolver;
import brightseam.planner.shell.SolverSettings;
import brightseam.traveller.NextAction;
import brightseam.traveller.TravellerCommand;
import brightseam.ui.bench.LedLot;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** From travellers on the shipped procedure to a plan of the line, as the brought-along layout has it. */
class LinePlanTest {

    private static final Layout LAYOUT = LayoutFile.read("");
    private static final StationId PICKLE = new StationId("S-PICKLE-TANK");
    private static final Working ADA = new Working(new BadgeId("P-0101"), "Ada Quill");

    @Test
    void a_lot_before_the_line_is_told_and_not_planned() {
        LedLot lot = at("T-1", next -> next instanceof NextAction.PutInto);
        LineSituation now = situation(lot.now(), Aim.SOONEST, false, lot);
        assertEquals(List.of(), now.loads());
        assertEquals(List.of(lot.card().id()), now.upstream());
    }

    @Test
    void what_soaks_is_lifted_inside_its_hold_and_rinsed_inside_the_gap() {
        LedLot soaking = at("T-1", next -> next instanceof NextAction.Holding);
        LedLot waiting = at("T-2", LinePlanTest::isAtDegrease);
        Moment now = soaking.now().plus(Duration.ofMinutes(3));
        PlanStanding plan = solve(situation(now, Aim.SOONEST, false, soaking, waiting));
        assertInstanceOf(Answer.Planned.class, plan.answer());
        assertEquals(2, plan.situation().loads().size());
        NextAction.Holding hold = (NextAction.Holding) soaking.card().next();
        Move lift = first(plan, label(plan, soaking));
        assertFalse(lift.takenAt().isBefore(hold.earliest()));
        assertFalse(lift.takenAt().isAfter(hold.latest().orElseThrow()));
        assertEquals("degrease-rinse", lift.step().orElseThrow().id().value());
        assertTrue(lift.beginsAt().since(lift.takenAt()).compareTo(Duration.ofSeconds(60)) <= 0);
    }

    @Test
    void a_locked_pickle_tank_is_named_as_what_stands_in_the_way() {
        LedLot lot = at("T-1", LinePlanTest::isAtDegrease);
        PlanStanding plan = solve(situation(lot.now(), Aim.SOONEST, true, lot));
        Answer.Impossible none = assertInstanceOf(Answer.Impossible.class, plan.answer());
        assertEquals(List.of(new Demand.TankLocked(PICKLE)), none.conflict().demands());
        assertTrue(none.conflict().isSmallest());
    }

    @Test
    void a_kit_is_bagged_before_its_session_and_begun_late() {
        LedLot lot = at("T-1", LinePlanTest::isAtDegrease);
        Instant session = lot.now().wall().plus(Duration.ofHours(8));
        PlanStanding plan = solve(situation(
                lot.now(), Aim.FOR_SESSIONS, false, Map.of(new KitId("K-1"), session), lot));
        List<Move> moves = plan.moves();
        assertFalse(moves.getLast().beginsAt().wall().isAfter(session.minus(LAYOUT.readyBefore())));
        assertTrue(moves.getFirst().takenAt().since(lot.now()).compareTo(Duration.ofHours(4)) > 0, "begun early");
    }

    @Test
    void a_lot_in_quarantine_is_planned_only_as_far_as_it_has_to_be_made_safe() {
        LedLot still = at("T-1", LinePlanTest::isAtDegrease);
        report(still);
        assertEquals(List.of(), situation(still.now(), Aim.SOONEST, false, still).loads());
        LedLot soaking = at("T-2", next -> next instanceof NextAction.Holding);
        report(soaking);
        LineLoad load = situation(soaking.now(), Aim.SOONEST, false, soaking).loads().getFirst();
        assertEquals(List.of("alkaline-degrease", "degrease-rinse"),
                load.steps().stream().map(step -> step.id().value()).toList());
    }

    @Test
    void what_was_planned_still_holds_a_minute_later_and_is_overdue_when_it_was_not_done() {
        LedLot soaking = at("T-1", next -> next instanceof NextAction.Holding);
        PlanStanding plan = solve(situation(soaking.now(), Aim.SOONEST, false, soaking));
        LineSituation later = situation(soaking.now().plus(Duration.ofMinutes(1)), Aim.SOONEST, false, soaking);
        Plan carried = Schedule.of(later.problem(), plan.planSeenAt(later.at()).orElseThrow()).toPlan(later.problem());
        assertEquals(List.of(), PlanChecker.check(later.problem(), carried));
        assertFalse(plan.isOverdue(later.at()));
        assertTrue(plan.isOverdue(soaking.now().plus(Duration.ofMinutes(25))));
    }

    @Test
    void a_signature_asks_for_no_new_plan_and_a_step_that_ends_does() {
        LedLot soaking = at("T-1", next -> next instanceof NextAction.Holding);
        LineSituation then = situation(soaking.now(), Aim.SOONEST, false, soaking);
        LineSituation later = situation(soaking.now().plus(Duration.ofMinutes(2)), Aim.SOONEST, false, soaking);
        assertTrue(later.isAs(then));
        assertFalse(situation(later.at(), Aim.SOONEST, true, soaking).isAs(then), "a tank was locked");
        assertFalse(situation(later.at(), Aim.FOR_SESSIONS, false, soaking).isAs(then), "another aim");
        soaking.follow(soaking.card().next());
        assertFalse(situation(soaking.now(), Aim.SOONEST, false, soaking).isAs(then), "it came out");
        LineSituation out = situation(soaking.now(), Aim.SOONEST, false, soaking);
        while (!(soaking.card().next() instanceof NextAction.Begin)) {
            soaking.follow(soaking.card().next());
        }
        assertTrue(situation(soaking.now(), Aim.SOONEST, false, soaking).isAs(out), "it was read and signed");
    }

    @Test
    void what_is_over_its_maximum_comes_out_and_stops_no_plan() {
        LedLot soaking = at("T-1", next -> next instanceof NextAction.Holding);
        PlanStanding plan = solve(situation(
                soaking.now().plus(Duration.ofMinutes(35)), Aim.SOONEST, false, soaking));
        assertTrue(plan.moves().getFirst().takenAt().since(plan.situation().at()).compareTo(Duration.ofMinutes(2)) < 0);
    }

    private static LedLot at(String label, Predicate<NextAction> goal) {
        LedLot lot = new LedLot(label);
        lot.until(goal);
        return lot;
    }

    private static boolean isAtDegrease(NextAction next) {
        return next instanceof NextAction.PutInto put && put.step().id().value().equals("alkaline-degrease");
    }

    private static void report(LedLot lot) {
        lot.does(new TravellerCommand.ReportNonconformance(lot.origin(), List.of(1), "scratched"));
    }

    private static String label(PlanStanding plan, LedLot lot) {
        return plan.situation().loads().stream().filter(load -> load.travellers().contains(lot.card().id()))
                .findFirst().orElseThrow().label();
    }

    private static Move first(PlanStanding plan, String label) {
        return plan.moves().stream().filter(move -> move.load().equals(label)).findFirst().orElseThrow();
    }

    private static PlanStanding solve(LineSituation now) {
        Answer answer = new PlanSolver(SolverSettings.within(Duration.ofSeconds(4)))
                .solve(now.problem(), Optional.empty(), better -> { });
        return new PlanStanding(now, answer);
    }

    private static LineSituation situation(Moment now, Aim aim, boolean pickleLocked, LedLot... lots) {
        return situation(now, aim, pickleLocked, Map.of(), lots);
    }

    private static LineSituation situation(Moment now, Aim aim, boolean pickleLocked, Map<KitId, Instant> due,
            LedLot... lots) {
        List<LineStation> stations = LAYOUT.places().stream().map(Place::station)
                .map(name -> new LineStation(new StationId("S-" + name.toUpperCase(java.util.Locale.ROOT)), name, 1,
                        pickleLocked && name.equals("pickle-tank"))).toList();
        return new LineProblems(LAYOUT, ZoneOffset.UTC).read(now, Stream.of(lots).map(LedLot::card)
                .map(card -> new LineLoad.Lot(card.traveller(), card.procedure())).toList(), stations,
                List.of(ADA), due, aim);
    }
}

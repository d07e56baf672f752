package brightseam.planner;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.BadgeId;
import brightseam.kernel.KitId;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A plan that can be worked is let through; each way of spoiling it is found, each kind of fault by one of them. */
class PlanCheckerTest {

    private static final StationId DOOR = new StationId("DOOR");
    private static final StationId SOAK = new StationId("S-SOAK");
    private static final StationId RINSE = new StationId("S-RINSE");
    private static final StationId BENCH = new StationId("S-BENCH");
    private static final BadgeId ONE = new BadgeId("P-1");
    private static final BadgeId TWO = new BadgeId("P-2");
    private static final KitId KIT = new KitId("K-1");
    private static final Walking WALKING =
            Walking.along(Map.of(DOOR, 0.0, SOAK, 2.0, RINSE, 5.0, BENCH, 9.0), 1);
    private static final LineProblem LINE = line();
    private static final Plan PLAN = ListPlanner.plan(LINE, 1, () -> false).orElseThrow();

    private static LineProblem line() {
        List<Stage> stages = List.of(
                Stage.of(new StepId("soak"), List.of(SOAK), 100).upTo(200).withGapMax(OptionalInt.of(40))
                        .handled(5, 5, 5),
                Stage.of(new StepId("rinse"), List.of(RINSE), 30).withGapMax(OptionalInt.of(300)).attended()
                        .handled(5, 5, 0),
                Stage.of(new StepId("wipe"), List.of(BENCH), 60).attended().waiting().handled(2, 0, 0),
                Stage.of(new StepId("check"), List.of(BENCH), 20).attended().atStationBefore());
        Basket basket = new Basket("X", Optional.of(KIT), Progress.waitingAt(DOOR), 0, stages,
                Optional.of(PartWindow.of(2, 3600, 3, 7200)));
        Basket other = new Basket("Y", Optional.of(KIT), Progress.waitingAt(DOOR), 0, stages, Optional.empty());
        List<Hands> hands = Stream.of(ONE, TWO)
                .map(one -> new Hands(one, List.of(new Shift(0, 3000)), Optional.of(DOOR))).toList();
        return new LineProblem(List.of(new Tank(SOAK, 1, false), new Tank(RINSE, 1, false), new Tank(BENCH, 1, false)),
                hands, WALKING, List.of(basket, other), List.of(new Session(KIT, 3000, 600, 300)),
                new Goal.Soonest());
    }

    @Test
    void a_plan_that_can_be_worked_is_let_through() {
        assertThat(PlanChecker.check(LINE, PLAN)).isEmpty();
    }

    @Test
    void each_kind_of_fault_is_found() {
        Map<Class<? extends Violation>, List<Violation>> found = Map.ofEntries(
                fault(Violation.StageMissing.class, LINE, withoutStage("X", 1)),
                fault(Violation.LeftOut.class, LINE, new Plan(stagesOf("Y"), actionsOf("Y"), Set.of("X"))),
                fault(Violation.NotAskedFor.class, LINE, withStage(new PlannedStage(
                        "Z", 0, new StepId("soak"), SOAK, 2000, 2100))),
                fault(Violation.WrongStation.class, LINE, changed("X", 1, stage -> moved(stage, BENCH))),
                fault(Violation.StationLocked.class, LINE.withTanks(List.of(new Tank(SOAK, 1, true),
                        new Tank(RINSE, 1, false), new Tank(BENCH, 1, false))), PLAN),
                fault(Violation.StartsTooEarly.class, withFirst(basket -> new Basket(basket.label(), basket.kit(),
                        basket.progress(), 60, basket.stages(), basket.window())), PLAN),
                fault(Violation.StartsTooLate.class, withFirst(basket -> basket.withProgress(
                        new Progress.Waiting(DOOR, OptionalInt.of(6)))), PLAN),
                fault(Violation.HoldTooShort.class, LINE, changed("X", 0, stage -> timed(stage, 0, -60))),
                fault(Violation.HoldTooLong.class, LINE, changed("X", 0, stage -> timed(stage, 0, 150))),
                fault(Violation.GapTooLong.class, LINE, changed("X", 2, stage -> timed(stage, 400, 400))),
                fault(Violation.TransferTooFast.class, LINE, changed("X", 1, stage -> timed(stage, -5, -5))),
                fault(Violation.NoHands.class, LINE, withoutAction("X", Action.Kind.ATTEND, 2)),
                fault(Violation.HandedOver.class, LINE, byOther("X", Action.Kind.LOWER, 1)),
                fault(Violation.OutOfShift.class, LINE.withHands(LINE.hands().stream()
                        .map(one -> new Hands(one.person(), List.of(new Shift(0, 120)), one.at())).toList()), PLAN),
                fault(Violation.InTwoPlaces.class, LINE, allBy(ONE)),
                fault(Violation.TankOverfull.class, LINE, bothAtOnce()),
                fault(Violation.NotReadyForSession.class, withSession(new Session(KIT, 700, 600, 0)), PLAN),
                fault(Violation.WindowRunsOut.class, withSession(new Session(KIT, 8000, 600, 0)), PLAN),
                fault(Violation.NotReadyBy.class, LINE.withGoal(new Goal.ReadyBy(200)), PLAN));
        found.forEach((kind, violations) ->
                assertThat(violations).as(kind.getSimpleName()).hasAtLeastOneElementOfType(kind));
        assertThat(found.keySet()).hasSize(Violation.class.getPermittedSubclasses().length);
    }

    @Test
    void whatever_hold_is_moved_by_a_minute_without_the_hands_is_found() {
        for (PlannedStage stage : PLAN.stages()) {
            for (int minute : new int[] {-60, 60}) {
                assertThat(PlanChecker.check(LINE, changed(stage.basket(), stage.number(),
                        one -> timed(one, minute, minute)))).as("%s by %d", stage, minute).isNotEmpty();
            }
        }
    }

    @Test
    void whatever_action_is_left_out_or_moved_by_a_second_is_found() {
        for (Action action : PLAN.actions()) {
            List<Action> others = new ArrayList<>(PLAN.actions());
            others.remove(action);
            assertThat(PlanChecker.check(LINE, new Plan(PLAN.stages(), others, Set.of()))).isNotEmpty();
            others.add(new Action(action.person(), action.basket(), action.kind(), action.stage(), action.from(),
                    action.to(), action.startSeconds() + 1, action.endSeconds() + 1));
            assertThat(PlanChecker.check(LINE, new Plan(PLAN.stages(), others, Set.of()))).isNotEmpty();
        }
    }

    @Test
    void the_window_may_be_used_up_to_its_last_second_and_no_further() {
        PlannedStage wipe = PLAN.stage("X", 2).orElseThrow();
        PlannedStage check = PLAN.stage("X", 3).orElseThrow();
        int sealed = check.endSeconds() - wipe.endSeconds();
        int last = check.endSeconds() + (3600 - sealed) * 2 - 300;
        assertThat(PlanChecker.check(withSession(new Session(KIT, last, 600, 300)), PLAN)).isEmpty();
        assertThat(PlanChecker.check(withSession(new Session(KIT, last + 1, 600, 300)), PLAN))
                .containsExactly(new Violation.WindowRunsOut(KIT, "X", 1));
    }

    private static Map.Entry<Class<? extends Violation>, List<Violation>> fault(
            Class<? extends Violation> kind, LineProblem problem, Plan plan) {
        return Map.entry(kind, PlanChecker.check(problem, plan));
    }

    private static LineProblem withFirst(UnaryOperator<Basket> change) {
        return LINE.withBaskets(List.of(change.apply(LINE.baskets().getFirst()), LINE.baskets().getLast()));
    }

    private static LineProblem withSession(Session session) {
        return LINE.withSessions(List.of(session));
    }

    private static Plan withoutStage(String basket, int number) {
        return new Plan(PLAN.stages().stream()
                .filter(stage -> !(stage.basket().equals(basket) && stage.number() == number)).toList(),
                PLAN.actions(), Set.of());
    }

    private static Plan withStage(PlannedStage more) {
        return new Plan(Stream.concat(PLAN.stages().stream(), Stream.of(more)).toList(), PLAN.actions(), Set.of());
    }

    private static Plan changed(String basket, int number, UnaryOperator<PlannedStage> change) {
        return new Plan(PLAN.stages().stream().map(stage -> stage.basket().equals(basket)
                && stage.number() == number ? change.apply(stage) : stage).toList(), PLAN.actions(), Set.of());
    }

    private static Plan withoutAction(String basket, Action.Kind kind, int stage) {
        return new Plan(PLAN.stages(), PLAN.actions().stream().filter(one -> !(one.basket().equals(basket)
                && one.kind() == kind && one.stage() == stage)).toList(), Set.of());
    }

    private static Plan byOther(String basket, Action.Kind kind, int stage) {
        return new Plan(PLAN.stages(), PLAN.actions().stream().map(one -> one.basket().equals(basket)
                && one.kind() == kind && one.stage() == stage
                ? by(one, one.person().equals(ONE) ? TWO : ONE) : one).toList(), Set.of());
    }

    /** Everything by one person's hands, the second basket's lowering at the time of the first one's rinse. */
    private static Plan allBy(BadgeId person) {
        PlannedStage rinse = PLAN.stage("X", 1).orElseThrow();
        int shift = rinse.startSeconds() - PLAN.stage("Y", 0).orElseThrow().startSeconds();
        return new Plan(PLAN.stages(), PLAN.actions().stream().map(one -> by(one, person))
                .map(one -> one.basket().equals("X") ? one : later(one, shift)).toList(), Set.of());
    }

    private static Plan bothAtOnce() {
        List<Optional<Schedule.Way>> ways = new ArrayList<>();
        Schedule.Way way = Schedule.of(LINE, PLAN).ways().getFirst().orElseThrow();
        for (BadgeId person : List.of(ONE, TWO)) {
            ways.add(Optional.of(new Schedule.Way(way.stations(), way.starts(), way.ends(),
                    way.persons().stream().map(any -> person).toList())));
        }
        return new Schedule(ways).toPlan(LINE);
    }

    private static Action by(Action one, BadgeId person) {
        return new Action(person, one.basket(), one.kind(), one.stage(), one.from(), one.to(), one.startSeconds(),
                one.endSeconds());
    }

    private static Action later(Action one, int seconds) {
        return new Action(one.person(), one.basket(), one.kind(), one.stage(), one.from(), one.to(),
                one.startSeconds() + seconds, one.endSeconds() + seconds);
    }

    private static List<PlannedStage> stagesOf(String basket) {
        return PLAN.stages().stream().filter(stage -> stage.basket().equals(basket)).toList();
    }

    private static List<Action> actionsOf(String basket) {
        return PLAN.actions().stream().filter(action -> action.basket().equals(basket)).toList();
    }

    private static PlannedStage moved(PlannedStage stage, StationId to) {
        return new PlannedStage(stage.basket(), stage.number(), stage.step(), to, stage.startSeconds(),
                stage.endSeconds());
    }

    private static PlannedStage timed(PlannedStage stage, int start, int end) {
        return new PlannedStage(stage.basket(), stage.number(), stage.step(), stage.station(),
                stage.startSeconds() + start, stage.endSeconds() + end);
    }
}

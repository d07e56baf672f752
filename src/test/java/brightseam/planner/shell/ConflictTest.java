package brightseam.planner.shell;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.planner.Answer;
import brightseam.planner.Conflict;
import brightseam.planner.Demand;
import brightseam.planner.Demands;
import brightseam.planner.Goal;
import brightseam.planner.Hands;
import brightseam.planner.LineProblem;
import brightseam.planner.PlanChecker;
import brightseam.planner.Progress;
import brightseam.planner.Session;
import brightseam.planner.Shift;
import brightseam.planner.Tank;
import brightseam.planner.TubeLine;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Where no plan can be, the smallest set of demands that stand against one another is named. */
class ConflictTest {

    private static final int HOUR = 3600;
    private static final PlanSolver SOLVER = new PlanSolver(SolverSettings.within(Duration.ofSeconds(10)));

    @Test
    void a_session_too_soon_for_the_shortest_times_stands_against_nothing_else() {
        LineProblem problem = due(TubeLine.of(1, 1, true, new Goal.ForSessions()), HOUR / 2);
        assertThat(conflict(problem).demands()).containsExactly(new Demand.SessionDue(TubeLine.KIT, HOUR / 2));
    }

    @Test
    void a_session_that_one_pair_of_hands_cannot_meet_stands_against_the_hands() {
        LineProblem problem = due(TubeLine.of(3, 1, true, new Goal.ForSessions()), 3300);
        assertThat(conflict(problem).demands()).containsExactlyInAnyOrder(
                new Demand.SessionDue(TubeLine.KIT, 3300), new Demand.PairsOfHands(1));
    }

    @Test
    void a_locked_tank_that_everything_has_to_go_through_is_named_alone() {
        LineProblem line = TubeLine.of(2, 2, true, new Goal.Soonest());
        LineProblem problem = line.withTanks(line.tanks().stream().map(tank -> new Tank(
                tank.id(), tank.capacityBaskets(), tank.id().equals(TubeLine.PICKLE))).toList());
        assertThat(conflict(problem).demands()).containsExactly(new Demand.TankLocked(TubeLine.PICKLE));
    }

    @Test
    void either_of_two_persons_staying_longer_would_do() {
        LineProblem line = TubeLine.of(1, 2, true, new Goal.Soonest());
        LineProblem problem = line.withHands(line.hands().stream()
                .map(one -> new Hands(one.person(), List.of(new Shift(0, HOUR / 2)), Optional.empty())).toList());
        assertThat(conflict(problem).demands()).hasSize(2).allMatch(one -> one instanceof Demand.ShiftEnds);
    }

    @Test
    void a_gap_that_runs_out_before_anybody_comes_is_named() {
        LineProblem line = TubeLine.of(1, 1, true, new Goal.Soonest());
        LineProblem problem = line
                .withHands(List.of(new Hands(line.hands().getFirst().person(), List.of(new Shift(600, 8 * HOUR)),
                        Optional.empty())))
                .withBaskets(line.baskets().stream().map(basket -> basket.withProgress(
                        new Progress.Waiting(TubeLine.DOOR, OptionalInt.of(60)))).toList());
        assertThat(conflict(problem).demands()).containsExactly(new Demand.GapRunning(
                "B-0001", line.baskets().getFirst().stages().getFirst().step(), 60));
    }

    @Test
    void a_window_that_ends_before_the_session_stands_against_the_end_of_work() {
        LineProblem line = TubeLine.of(1, 1, true, new Goal.ForSessions());
        LineProblem problem = due(line, 100 * HOUR).withHands(List.of(new Hands(
                line.hands().getFirst().person(), List.of(new Shift(0, 8 * HOUR)), Optional.empty())));
        assertThat(conflict(problem).demands()).containsExactlyInAnyOrder(
                new Demand.WindowOpen(TubeLine.KIT, "B-0001"),
                new Demand.ShiftEnds(line.hands().getFirst().person(), 8 * HOUR));
    }

    private static LineProblem due(LineProblem problem, int seconds) {
        return problem.withSessions(List.of(new Session(TubeLine.KIT, seconds + HOUR, HOUR, HOUR)));
    }

    /** The conflict, after a look that there is a plan without any one of its demands. */
    private static Conflict conflict(LineProblem problem) {
        Answer answer = SOLVER.solve(problem);
        assertThat(answer).isInstanceOf(Answer.Impossible.class);
        Conflict conflict = ((Answer.Impossible) answer).conflict();
        assertThat(conflict.isSmallest()).isTrue();
        for (Demand demand : conflict.demands()) {
            if (!(demand instanceof Demand.PairsOfHands)) {
                LineProblem freed = Demands.without(problem, Set.of(demand));
                assertThat(SOLVER.solve(freed)).as("without %s", demand).isInstanceOfSatisfying(
                        Answer.Planned.class, planned ->
                                assertThat(PlanChecker.check(freed, planned.plan())).isEmpty());
            }
        }
        return conflict;
    }
}

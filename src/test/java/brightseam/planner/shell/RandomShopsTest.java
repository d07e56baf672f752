package brightseam.planner.shell;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.planner.Answer;
import brightseam.planner.LineProblem;
import brightseam.planner.Measure;
import brightseam.planner.PlanChecker;
import brightseam.planner.Shops;
import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

class RandomShopsTest {

    private static final int SHOPS = Integer.getInteger("shops", 60);

    private enum Outcome { PROVEN, GOOD, IMPOSSIBLE, UNDECIDED }

    @Test
    void every_plan_of_a_random_shop_passes_the_checker_and_measures_what_was_said() {
        PlanSolver solver = new PlanSolver(SolverSettings.within(Duration.ofMillis(250)));
        Map<Outcome, Integer> outcomes = new EnumMap<>(Outcome.class);
        for (long seed = 1; seed <= SHOPS; seed++) {
            LineProblem problem = Shops.random(seed);
            Outcome outcome = switch (solver.solve(problem)) {
                case Answer.Planned planned -> {
                    assertThat(PlanChecker.check(problem, planned.plan())).as("shop %d", seed).isEmpty();
                    assertThat(planned.quality().measure()).as("shop %d", seed)
                            .isEqualTo(Measure.first(problem, planned.plan()))
                            .isGreaterThanOrEqualTo(planned.quality().bound());
                    yield planned.quality().isProven() ? Outcome.PROVEN : Outcome.GOOD;
                }
                case Answer.Impossible ignored -> Outcome.IMPOSSIBLE;
                case Answer.Undecided ignored -> Outcome.UNDECIDED;
            };
            outcomes.merge(outcome, 1, Integer::sum);
        }
        assertThat(outcomes.getOrDefault(Outcome.PROVEN, 0)).isGreaterThan(SHOPS / 4);
    }
}

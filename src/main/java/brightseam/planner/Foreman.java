package brightseam.planner;

import java.util.Optional;
import java.util.Random;

/** Plans by dispatching, with one random taste for sorts of errands; for sessions, begun as late as it still works. */
final class Foreman {

    private Foreman() {}

    static Optional<Plan> plan(LineProblem problem, long taste) {
        if (!(problem.goal() instanceof Goal.ForSessions)) {
            return dispatch(problem, taste, Integer.MAX_VALUE);
        }
        int low = 0;
        int high = problem.horizonSeconds();
        Optional<Plan> best = Optional.empty();
        while (high - low > 10) {
            int lead = (low + high) / 2;
            Optional<Plan> found = dispatch(problem, taste, lead)
                    .filter(plan -> PlanChecker.check(problem, plan).isEmpty());
            if (found.isPresent()) {
                best = found;
                high = lead;
            } else {
                low = lead;
            }
        }
        return best;
    }

    private static Optional<Plan> dispatch(LineProblem problem, long taste, int leadSeconds) {
        int[] notBefore = problem.baskets().stream().mapToInt(basket -> problem.sessionOf(basket)
                .map(session -> Math.max(0, session.dueSeconds() - leadSeconds)).orElse(0)).toArray();
        return new DispatchPlanner(problem, notBefore, new Random(taste)).plan();
    }
}

package brightseam.bench;

import brightseam.planner.Answer;
import brightseam.planner.Goal;
import brightseam.planner.LineProblem;
import brightseam.planner.TubeLine;
import brightseam.planner.shell.PlanSolver;
import brightseam.planner.shell.SolverSettings;
import java.time.Duration;
import java.util.Optional;

/** Planning. */
public final class PlanBench {

    private static final int[] BASKETS = {5, 20, 60};
    private static final Duration LIMIT = Duration.ofSeconds(Integer.getInteger("seconds", 10));

    private PlanBench() {}

    public static void main(String[] args) {
        if (args.length > 0) { var pr = TubeLine.of(Integer.parseInt(args[0]), Integer.parseInt(args[1]), Boolean.parseBoolean(args[2]), args[3].equals("s") ? new Goal.Soonest() : new Goal.ForSessions()); System.out.println(new PlanSolver(new SolverSettings(LIMIT, Integer.getInteger("workers", 2), 1)).solve(pr, Optional.empty(), b -> System.out.println(b.quality())) instanceof Answer.Planned p ? p.quality() : "none"); return; }
        for (boolean attended : new boolean[] {true, false}) {
            for (Goal goal : new Goal[] {new Goal.Soonest(), new Goal.ForSessions()}) {
                for (int baskets : BASKETS) {
                    for (int hands = 1; hands <= 3; hands++) {
                        LineProblem problem = TubeLine.of(baskets, hands, attended, goal);
                        long[] first = {-1, -1};
                        long began = System.nanoTime();
                        Answer answer = new PlanSolver(new SolverSettings(LIMIT, Integer.getInteger("workers", 2), 1)).solve(problem, Optional.empty(), better -> {
                            if (first[0] < 0) {
                                first[0] = better.quality().millis();
                                first[1] = better.quality().measure();
                            }
                        });
                        System.out.printf("%s %s baskets %d hands %d: first %d ms (%d), %s, %d ms%n", attended, goal, baskets, hands,
                                first[0], first[1], answer instanceof Answer.Planned p ? "measure " + p.quality().measure() + " bound "
                                        + p.quality().bound() + " gap " + Math.round(p.quality().gap() * 1000) / 10.0 + " % at" + p.quality().millis() : answer.toString(),
                                (System.nanoTime() - began) / 1_000_000);
                    }
                }
            }
        }
    }
}

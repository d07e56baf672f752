package brightseam.bench;

import brightseam.kernel.BadgeId;
import brightseam.kernel.StationId;
import brightseam.planner.Answer;
import brightseam.planner.Goal;
import brightseam.planner.Hands;
import brightseam.planner.LaterOn;
import brightseam.planner.LineProblem;
import brightseam.planner.Plan;
import brightseam.planner.Tank;
import brightseam.planner.TubeLine;
import brightseam.planner.shell.PlanSolver;
import brightseam.planner.shell.SolverSettings;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The plan of the line: eight stations, the wet steps of the tube procedure, 5, 20 and 60 baskets, one to three pairs
 * of hands, two workers. First, planning from nothing: when the first plan was there, and how far the last one is from
 * the bound after {@code -Dseconds} (10). Gap is by the goal's own measure: the last end for "soonest", the time from
 * the kit's first start to its due time for "sessions". Then, planning again, an hour into the plan of 20 baskets,
 * after something went differently: when the first plan was there, and what a second makes of it.
 */
public final class PlanBench {

    private static final int[] BASKETS = {5, 20, 60};
    private static final int HANDS_MAX = 3;
    private static final int HOUR = 3600;
    private static final Duration LIMIT = Duration.ofSeconds(Integer.getInteger("seconds", 10));
    private static final Duration AGAIN = Duration.ofSeconds(1);
    private static final StationId RINSE = new StationId("S-RINSE-2");

    private PlanBench() {}

    /** What came of one problem. */
    private record Run(long firstMillis, Answer answer) {

        private String line() {
            return switch (answer) {
                case Answer.Planned planned -> String.format("%8d %9d %9d %9d %7.1f %% %s", firstMillis,
                        planned.quality().millis(), planned.quality().measure(), planned.quality().bound(),
                        planned.quality().gap() * 100, planned.quality().isProven() ? "proven" : "");
                case Answer.Impossible impossible -> "no plan can be: " + impossible.conflict();
                case Answer.Undecided undecided -> "undecided after " + undecided.millis() + " ms";
            };
        }
    }

    /** Runs and prints. */
    public static void main(String[] args) {
        solve(TubeLine.of(2, 1, true, new Goal.Soonest()), Duration.ofSeconds(2), Optional.empty());
        System.out.printf("%-10s %-22s %7s %5s %8s %9s %9s %9s %9s%n", "rinses", "goal", "baskets", "hands",
                "first ms", "ended ms", "measure s", "bound s", "gap");
        for (boolean attended : new boolean[] {true, false}) {
            for (Goal goal : new Goal[] {new Goal.Soonest(), new Goal.ForSessions()}) {
                for (int baskets : BASKETS) {
                    for (int hands = 1; hands <= HANDS_MAX; hands++) {
                        Run run = solve(TubeLine.of(baskets, hands, attended, goal), LIMIT, Optional.empty());
                        System.out.printf("%-10s %-22s %7d %5d %s%n", attended ? "attended" : "alone",
                                goal.getClass().getSimpleName(), baskets, hands, run.line());
                    }
                }
            }
        }
        for (int hands = 1; hands <= HANDS_MAX; hands++) {
            again(hands);
        }
    }

    private static void again(int hands) {
        LineProblem morning = TubeLine.of(20, hands, true, new Goal.Soonest());
        if (!(solve(morning, LIMIT, Optional.empty()).answer() instanceof Answer.Planned planned)) {
            return;
        }
        int now = LaterOn.quiet(planned.plan(), HOUR);
        LineProblem later = LaterOn.problem(morning, planned.plan(), now);
        Plan former = planned.plan().seenLater(now);
        changes(later).forEach((what, problem) -> System.out.printf("again: %-32s %2d %s%n", what, hands,
                solve(problem, AGAIN, Optional.of(former)).line()));
    }

    private static Map<String, LineProblem> changes(LineProblem later) {
        Map<String, LineProblem> changes = new LinkedHashMap<>();
        changes.put("all as planned", later);
        changes.put("nobody came for 5 min", LaterOn.idle(later, 300));
        changes.put("a rinse tank locked", later.withTanks(later.tanks().stream().map(tank -> new Tank(
                tank.id(), tank.capacityBaskets(), tank.id().equals(RINSE))).toList()));
        changes.put("a basket rejected", later.withBaskets(later.baskets().stream().skip(1).toList()));
        List<Hands> more = new ArrayList<>(later.hands());
        more.add(new Hands(new BadgeId("P-0109"), later.hands().getFirst().shifts(),
                Optional.of(TubeLine.DOOR)));
        changes.put("another fabricator arrives", later.withHands(more));
        return changes;
    }

    private static Run solve(LineProblem problem, Duration limit, Optional<Plan> former) {
        long[] first = {-1};
        Answer answer = new PlanSolver(SolverSettings.within(limit)).solve(problem, former, better -> {
            if (first[0] < 0) {
                first[0] = better.quality().millis();
            }
        });
        return new Run(first[0], answer);
    }
}

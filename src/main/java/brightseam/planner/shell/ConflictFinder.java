package brightseam.planner.shell;

import brightseam.planner.Basket;
import brightseam.planner.Conflict;
import brightseam.planner.Demand;
import brightseam.planner.Demands;
import brightseam.planner.LineProblem;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Finds the demands that stand against one another: takes baskets away as long as there is still no plan, then demands,
 * first whole kinds at once and then one by one. What is left is smallest: without any one of it there would be a plan.
 */
final class ConflictFinder {

    /** Nearly every question is answered within. */
    private static final Duration ENOUGH = Duration.ofMillis(300);

    private final SolverSettings settings;
    private final long until;
    private boolean provenSmallest = true;

    ConflictFinder(SolverSettings settings, Duration limit) {
        this.settings = settings;
        until = System.nanoTime() + limit.toNanos();
    }

    /** The conflict in {@code whole}, for which there is no plan. */
    Conflict find(LineProblem whole) {
        LineProblem problem = fewestBaskets(whole);
        List<Demand> all = Demands.of(problem);
        Set<Demand> dropped = new HashSet<>();
        Map<Class<?>, List<Demand>> kinds = all.stream().collect(Collectors.groupingBy(Object::getClass));
        all.stream().map(Object::getClass).distinct().forEach(kind -> tryWithout(problem, dropped, kinds.get(kind)));
        List<Demand> left = new ArrayList<>(all);
        left.removeAll(dropped);
        for (Demand demand : left) {
            tryWithout(problem, dropped, List.of(demand));
        }
        left.removeAll(dropped);
        return new Conflict(left, provenSmallest);
    }

    /** The problem of as few baskets as have no plan by themselves: one alone, where there is one, is soon found. */
    private LineProblem fewestBaskets(LineProblem whole) {
        for (Basket basket : whole.baskets()) {
            LineProblem alone = whole.withBaskets(List.of(basket));
            if (solve(alone, Set.of()) == CpSolverStatus.INFEASIBLE) {
                return alone;
            }
        }
        LineProblem fewest = whole;
        for (int size = whole.baskets().size() / 2; size >= 1; size /= 2) {
            for (int from = 0; from < fewest.baskets().size() && fewest.baskets().size() > size; ) {
                List<Basket> others = new ArrayList<>(fewest.baskets());
                others.subList(from, Math.min(from + size, others.size())).clear();
                if (solve(fewest.withBaskets(others), Set.of()) == CpSolverStatus.INFEASIBLE) {
                    fewest = fewest.withBaskets(others);
                } else {
                    from += size;
                }
            }
        }
        return fewest;
    }

    private void tryWithout(LineProblem problem, Set<Demand> dropped, List<Demand> more) {
        Set<Demand> all = new HashSet<>(dropped);
        all.addAll(more);
        CpSolverStatus status = solve(problem, all);
        if (status == CpSolverStatus.INFEASIBLE) {
            dropped.addAll(more);
        } else if (more.size() == 1 && status == CpSolverStatus.UNKNOWN) {
            provenSmallest = false;
        }
    }

    private CpSolverStatus solve(LineProblem problem, Set<Demand> dropped) {
        long left = until - System.nanoTime();
        if (left <= 0) {
            return CpSolverStatus.UNKNOWN;
        }
        boolean handsBind = dropped.stream().noneMatch(one -> one instanceof Demand.PairsOfHands);
        LineModel line = new LineModel(Demands.without(problem, dropped), handsBind);
        long limit = Math.max(left / 4, Math.min(left, ENOUGH.toNanos()));
        CpSolver solver = Solvers.within(Duration.ofNanos(limit), settings);
        return solver.solve(line.model);
    }
}

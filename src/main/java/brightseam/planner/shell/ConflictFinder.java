package brightseam.planner.shell;

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
 * Finds the demands that stand against one another: takes demands away, first whole kinds at once and then one by one,
 * as long as there is still no plan. What is left is smallest: without any one of it there would be a plan.
 */
final class ConflictFinder {

    private final SolverSettings settings;
    private final long until;
    private boolean provenSmallest = true;

    ConflictFinder(SolverSettings settings, Duration limit) {
        this.settings = settings;
        until = System.nanoTime() + limit.toNanos();
    }

    /** The conflict in {@code problem}, for which there is no plan. */
    Conflict find(LineProblem problem) {
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
        CpSolver solver = Solvers.within(Duration.ofNanos(left), settings);
        return solver.solve(line.model);
    }
}

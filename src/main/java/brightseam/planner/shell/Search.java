package brightseam.planner.shell;

import brightseam.planner.Measure;
import brightseam.planner.Plan;
import brightseam.planner.PlanChecker;
import brightseam.planner.Quality;
import brightseam.planner.Violation;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

/** One search: minimises an expression and hands every better plan on, once the checker has passed it. */
final class Search {

    /** How a search ended. */
    record Ending(CpSolverStatus status, long bound) {}

    private final LineModel line;
    private final SolverSettings settings;
    private final long began;
    private final BiConsumer<Plan, Quality> found;
    private Optional<IllegalStateException> broken = Optional.empty();

    Search(LineModel line, SolverSettings settings, long began, BiConsumer<Plan, Quality> found) {
        this.line = line;
        this.settings = settings;
        this.began = began;
        this.found = found;
    }

    Ending minimise(LinearExpr measure, Duration limit, Optional<Quality> settled) {
        line.model.minimize(measure);
        CpSolver solver = Solvers.within(limit, settings);
        CpSolverStatus status = solver.solve(line.model, new CpSolverSolutionCallback() {
            @Override
            public void onSolutionCallback() {
                take(line.read(this::value).toPlan(line.problem),
                        settled.map(Quality::bound).orElseGet(() -> rounded(bestObjectiveBound())));
            }
        });
        if (broken.isPresent()) {
            throw broken.get();
        }
        if (status == CpSolverStatus.MODEL_INVALID) {
            throw new IllegalStateException("the model of the line is not valid: " + line.model.validate());
        }
        return new Ending(status, rounded(solver.bestObjectiveBound()));
    }

    /** Keeps what is wrong for after the search: nothing is thrown through the solver's own code. */
    private void take(Plan plan, long bound) {
        List<Violation> violations = PlanChecker.check(line.problem, plan);
        if (violations.isEmpty()) {
            found.accept(plan, new Quality(Measure.first(line.problem, plan), bound, millis()));
        } else {
            broken = Optional.of(new IllegalStateException("the solver's plan breaks rules: " + violations));
        }
    }

    long millis() {
        return (System.nanoTime() - began) / 1_000_000;
    }

    private static long rounded(double bound) {
        return (long) Math.ceil(bound - 1e-6);
    }
}

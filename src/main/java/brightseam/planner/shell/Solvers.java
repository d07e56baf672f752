package brightseam.planner.shell;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import java.time.Duration;

/** Makes solvers, with the native library loaded once. */
final class Solvers {

    /** Probing takes seconds for twenty baskets, and finds little. */
    private static final int NO_PROBING = 0;

    static {
        Loader.loadNativeLibraries();
    }

    private Solvers() {}

    static CpSolver within(Duration limit, SolverSettings settings) {
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setMaxTimeInSeconds(Math.max(0.01, limit.toMillis() / 1000.0))
                .setNumWorkers(settings.workers())
                .setRandomSeed(settings.seed())
                .setCpModelProbingLevel(NO_PROBING);
        return solver;
    }

    /** An empty model; the native library is there by now. */
    static CpModel model() {
        return new CpModel();
    }
}

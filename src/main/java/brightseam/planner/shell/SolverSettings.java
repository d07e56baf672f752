package brightseam.planner.shell;

import java.time.Duration;

/**
 * How long and how hard the solver works.
 *
 * @param limit when it has to answer with what it has
 * @param workers how many threads search at once
 * @param seed the same seed searches the same way, as far as several threads allow
 */
public record SolverSettings(Duration limit, int workers, int seed) {

    /** Two workers and a fixed seed, for {@code limit}. */
    public static SolverSettings within(Duration limit) {
        return new SolverSettings(limit, 2, 1);
    }

    /** The same with another limit. */
    public SolverSettings withLimit(Duration other) {
        return new SolverSettings(other, workers, seed);
    }
}

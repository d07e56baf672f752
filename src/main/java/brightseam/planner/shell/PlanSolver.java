package brightseam.planner.shell;

import brightseam.planner.Answer;
import brightseam.planner.Bounds;
import brightseam.planner.Conflict;
import brightseam.planner.LineProblem;
import brightseam.planner.ListPlanner;
import brightseam.planner.Measure;
import brightseam.planner.Plan;
import brightseam.planner.PlanChecker;
import brightseam.planner.Quality;
import brightseam.planner.Schedule;
import com.google.ortools.sat.CpSolverStatus;
import java.time.Duration;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Plans the line: a first plan at once by putting baskets in one after another, then better ones by CP-SAT until one is
 * proven best or the time is over. Where no plan can be, it names what stands against one another.
 */
public final class PlanSolver {

    /** Share of the time that goes into the goal's own measure before the next one is looked at. */
    private static final double FIRST_SHARE = 0.75;

    /** That there is no plan is soon known; to name why takes a little longer. */
    private static final Duration NAMING_MIN = Duration.ofSeconds(2);

    private final SolverSettings settings;

    /** A solver that works as {@code settings} say. */
    public PlanSolver(SolverSettings settings) {
        this.settings = settings;
    }

    /** The answer to {@code problem} within the time of the settings, from nothing. */
    public Answer solve(LineProblem problem) {
        return solve(problem, Optional.empty(), better -> { });
    }

    /**
     * The answer to {@code problem} within the time of the settings.
     *
     * @param previous a plan of an earlier problem to start from, its times counted from now (see
     *     {@link Plan#seenLater}); what no longer fits is mended
     * @param better told of every plan as it is found, each better than the one before, on the solver's thread
     */
    public Answer solve(LineProblem problem, Optional<Plan> previous, Consumer<Answer.Planned> better) {
        return new Run(problem, better).answer(previous);
    }

    /** One problem on its way to an answer. */
    private final class Run {

        private final LineProblem problem;
        private final Consumer<Answer.Planned> better;
        private final long began = System.nanoTime();
        private Optional<Answer.Planned> best = Optional.empty();

        Run(LineProblem problem, Consumer<Answer.Planned> better) {
            this.problem = problem;
            this.better = better;
        }

        Answer answer(Optional<Plan> former) {
            Optional<Plan> previous = former.map(plan -> Schedule.of(problem, plan).toPlan(problem));
            previous.filter(plan -> PlanChecker.check(problem, plan).isEmpty())
                    .ifPresent(plan -> take(plan, unproven(plan)));
            long listingUntil = began + listing().toNanos();
            ListPlanner.improve(problem, settings.seed(), () -> System.nanoTime() < listingUntil,
                    plan -> take(plan, unproven(plan)));
            LineModel line = new LineModel(problem);
            best.map(Answer.Planned::plan).or(() -> previous).ifPresent(plan -> Hints.tell(line, plan));
            Search search = new Search(line, settings, began, this::take);
            Search.Ending ending = search.minimise(
                    Objective.first(line), left(FIRST_SHARE), Optional.empty());
            return switch (ending.status()) {
                case OPTIMAL, FEASIBLE -> finish(line, search, ending);
                case INFEASIBLE -> new Answer.Impossible(conflict());
                case UNKNOWN, MODEL_INVALID, UNRECOGNIZED -> bounded(ending.bound());
            };
        }

        /** Many baskets are better put in many times over; the solver does few of them better by itself. */
        private Duration listing() {
            long baskets = problem.baskets().size();
            Duration wanted = Duration.ofMillis(100 + 10 * baskets * baskets);
            Duration half = settings.limit().dividedBy(2);
            return wanted.compareTo(half) < 0 ? wanted : half;
        }

        private Answer finish(LineModel line, Search search, Search.Ending ending) {
            Answer.Planned first = bounded(ending.bound()) instanceof Answer.Planned planned ? planned
                    : best.orElseThrow();
            best = Optional.of(first);
            if (left(1).toMillis() < 20) {
                return first;
            }
            line.model.addLessOrEqual(Objective.first(line), first.quality().measure());
            Hints.tell(line, first.plan());
            search.minimise(Objective.second(line), left(1), Optional.of(first.quality()));
            Answer.Planned last = best.orElseThrow();
            return new Answer.Planned(last.plan(), new Quality(
                    last.quality().measure(), first.quality().bound(), search.millis()));
        }

        private Conflict conflict() {
            Duration twice = settings.limit().multipliedBy(2);
            return new ConflictFinder(settings, twice.compareTo(NAMING_MIN) < 0 ? NAMING_MIN : twice).find(problem);
        }

        /** The best plan with what is known about it by now. */
        private Answer bounded(long bound) {
            long millis = (System.nanoTime() - began) / 1_000_000;
            return best.<Answer>map(planned -> new Answer.Planned(planned.plan(),
                            new Quality(planned.quality().measure(),
                                    Math.max(bound, Bounds.first(problem)), millis)))
                    .orElseGet(() -> new Answer.Undecided(millis));
        }

        private Quality unproven(Plan plan) {
            return new Quality(Measure.first(problem, plan), Bounds.first(problem),
                    (System.nanoTime() - began) / 1_000_000);
        }

        private void take(Plan plan, Quality quality) {
            if (best.isEmpty() || ListPlanner.isBetter(problem, plan, best.get().plan())) {
                best = Optional.of(new Answer.Planned(plan, quality));
                better.accept(best.get());
            }
        }

        private Duration left(double share) {
            long used = System.nanoTime() - began;
            return Duration.ofNanos(Math.max(10_000_000, (long) (settings.limit().toNanos() * share) - used));
        }
    }
}

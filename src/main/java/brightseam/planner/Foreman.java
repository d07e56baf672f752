package brightseam.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Plans by dispatching, many times over: first with one taste for sorts of errands each time, then by changing the best
 * taste a little for some errands. For sessions every kit is begun as late as it still works.
 */
final class Foreman {

    private static final int TASTES = 60;
    private static final double SPAN_SECONDS = 600;

    private final LineProblem problem;
    private final Optional<Plan> known;
    private final Routes routes;
    private final Random random;
    private Optional<Plan> best = Optional.empty();
    private double[][] taste;

    /** Starts from a plan found otherwise, where there is one: only what is better than that is told. */
    Foreman(LineProblem problem, long seed, Optional<Plan> known) {
        this.known = known;
        this.problem = problem;
        routes = new Routes(problem);
        random = new Random(seed);
        taste = bySort();
    }

    /** Looks for better plans while {@code goOn}, and tells each. */
    void improve(BooleanSupplier goOn, Consumer<Plan> better) {
        long bound = Bounds.first(problem);
        Optional<Plan> told = known;
        for (int attempt = 0; goOn.getAsBoolean() && !isBest(told, bound); attempt++) {
            double[][] tried = attempt < TASTES || best.isEmpty() ? bySort() : nearby();
            Optional<Plan> found = asLateAsWorks(tried);
            if (found.isPresent() && (best.isEmpty() || !ListPlanner.isBetter(problem, best.get(), found.get()))
                    && PlanChecker.check(problem, found.get()).isEmpty()) {
                best = found;
                taste = tried;
                if (told.isEmpty() || ListPlanner.isBetter(problem, found.get(), told.get())) {
                    told = found;
                    better.accept(found.get());
                }
            }
        }
    }

    private boolean isBest(Optional<Plan> plan, long bound) {
        return plan.isPresent() && Measure.first(problem, plan.get()) <= bound;
    }

    private double[][] bySort() {
        double[] sorts = random.doubles(32, 0, SPAN_SECONDS).toArray();
        List<double[]> all = new ArrayList<>();
        for (Basket basket : problem.baskets()) {
            double[] own = new double[Errand.of(basket).size()];
            System.arraycopy(sorts, 0, own, 0, Math.min(own.length, sorts.length));
            all.add(own);
        }
        return all.toArray(new double[0][]);
    }

    private double[][] nearby() {
        double[][] near = new double[taste.length][];
        for (int i = 0; i < near.length; i++) {
            near[i] = taste[i].clone();
        }
        int changes = 1 + random.nextInt(6);
        for (int i = 0; i < changes; i++) {
            double[] one = near[random.nextInt(near.length)];
            if (one.length > 0) {
                one[random.nextInt(one.length)] += random.nextGaussian() * SPAN_SECONDS / 2;
            }
        }
        return near;
    }

    private Optional<Plan> asLateAsWorks(double[][] tried) {
        if (!(problem.goal() instanceof Goal.ForSessions)) {
            return dispatch(tried, Integer.MAX_VALUE);
        }
        int low = best.isEmpty() ? 0 : (int) Bounds.first(problem);
        int high = best.isEmpty() ? problem.horizonSeconds() : (int) Measure.first(problem, best.get());
        Optional<Plan> found = Optional.empty();
        while (high - low > 10) {
            int lead = best.isPresent() && found.isEmpty() ? high : (low + high) / 2;
            Optional<Plan> plan = dispatch(tried, lead)
                    .filter(one -> PlanChecker.check(problem, one).isEmpty());
            if (plan.isPresent()) {
                found = plan;
                high = lead;
            } else if (lead == high) {
                return Optional.empty();
            } else {
                low = lead;
            }
        }
        return found;
    }

    private Optional<Plan> dispatch(double[][] tried, int leadSeconds) {
        int[] notBefore = problem.baskets().stream().mapToInt(basket -> problem.sessionOf(basket)
                .map(session -> Math.max(0, session.dueSeconds() - leadSeconds)).orElse(0)).toArray();
        return new DispatchPlanner(problem, routes, notBefore, tried).plan();
    }
}

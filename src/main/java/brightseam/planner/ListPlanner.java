package brightseam.planner;

import brightseam.kernel.KitId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Puts the baskets into the line one after another, each as early as it fits; for sessions, each kit as late as it
 * still fits. Quick, and good enough to start from; nothing tells how far from the best it is.
 */
public final class ListPlanner {

    private static final int ORDERS = 3;

    private final LineProblem problem;
    private Schedule.Way[] ways;

    private ListPlanner(LineProblem problem) {
        this.problem = problem;
    }

    /** The best plan found; empty where none was, which proves nothing. */
    public static Optional<Plan> plan(LineProblem problem, long seed, BooleanSupplier goOn) {
        AtomicReference<Plan> last = new AtomicReference<>();
        improve(problem, seed, goOn, last::set);
        return Optional.ofNullable(last.get());
    }

    /**
     * Looks for plans, each better than the one before and let through by the checker.
     *
     * @param goOn asked before every attempt but the first
     * @param better told of each
     */
    public static void improve(LineProblem problem, long seed, BooleanSupplier goOn, Consumer<Plan> better) {
        Random random = new Random(seed);
        Optional<Plan> best = Optional.empty();
        for (int attempt = 0; attempt < ORDERS && (attempt == 0 || goOn.getAsBoolean()); attempt++) {
            Optional<Plan> found = new ListPlanner(problem).inOrder(order(problem, attempt, random));
            if (found.isPresent() && (best.isEmpty() || isBetter(problem, found.get(), best.get()))
                    && PlanChecker.check(problem, found.get()).isEmpty()) {
                best = found;
                better.accept(found.get());
            }
        }
        new Foreman(problem, seed, best).improve(goOn, better);
    }

    /** Whether {@code one} measures better than {@code other}. */
    public static boolean isBetter(LineProblem problem, Plan one, Plan other) {
        int first = Long.compare(Measure.first(problem, one), Measure.first(problem, other));
        return first != 0 ? first < 0 : Measure.second(problem, one) < Measure.second(problem, other);
    }

    private static List<Integer> order(LineProblem problem, int attempt, Random random) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < problem.baskets().size(); i++) {
            order.add(i);
        }
        if (attempt > 1) {
            Collections.shuffle(order, random);
        } else if (attempt == 1) {
            order.sort(Comparator.comparingInt(i -> -work(problem.baskets().get(i))));
        }
        order.sort(Comparator.comparing(i -> problem.baskets().get(i).mayStay()));
        return order;
    }

    private static int work(Basket basket) {
        return basket.stages().stream().mapToInt(Stage::holdMinSeconds).sum();
    }

    private Optional<Plan> inOrder(List<Integer> order) {
        ways = new Schedule.Way[problem.baskets().size()];
        Occupancy occupied = new Occupancy(problem);
        Map<Optional<KitId>, List<Integer>> groups = new LinkedHashMap<>();
        order.stream().filter(i -> !problem.baskets().get(i).mayStay())
                .forEach(i -> groups.computeIfAbsent(Optional.empty(), none -> new ArrayList<>()).add(i));
        Optional<Occupancy> after = groups.isEmpty() ? Optional.of(occupied)
                : earliest(groups.get(Optional.<KitId>empty()), occupied, 0);
        groups.clear();
        order.stream().filter(i -> problem.baskets().get(i).mayStay())
                .sorted(Comparator.comparingInt(i -> problem.sessionOf(problem.baskets().get(i))
                        .map(Session::dueSeconds).orElse(Integer.MAX_VALUE)))
                .forEach(i -> groups.computeIfAbsent(
                        problem.sessionOf(problem.baskets().get(i)).map(Session::kit), kit -> new ArrayList<>())
                        .add(i));
        for (List<Integer> group : groups.values()) {
            if (after.isPresent()) {
                after = isLate(group) ? latest(group, after.get()) : earliest(group, after.get(), 0);
            }
        }
        return after.map(done -> schedule().toPlan(problem));
    }

    private boolean isLate(List<Integer> group) {
        return problem.goal() instanceof Goal.ForSessions
                && problem.sessionOf(problem.baskets().get(group.getFirst())).isPresent();
    }

    /** As late as the whole group is ready in time, by halving. */
    private Optional<Occupancy> latest(List<Integer> group, Occupancy occupied) {
        int low = 0;
        int high = problem.sessionOf(problem.baskets().get(group.getFirst())).orElseThrow().dueSeconds();
        Optional<Occupancy> best = Optional.empty();
        Schedule.Way[] bestWays = ways;
        while (high - low > 10) {
            int middle = (low + high) / 2;
            Schedule.Way[] kept = ways.clone();
            Optional<Occupancy> found = earliest(group, occupied, middle);
            if (found.isPresent()) {
                best = found;
                bestWays = ways;
                low = middle;
            } else {
                high = middle;
            }
            ways = kept;
        }
        ways = bestWays;
        return best.isPresent() ? best : earliest(group, occupied, 0);
    }

    private Optional<Occupancy> earliest(List<Integer> group, Occupancy occupied, int notBefore) {
        Occupancy now = new Occupancy(occupied);
        ways = ways.clone();
        for (int i : group) {
            Basket basket = problem.baskets().get(i);
            Optional<Schedule.Way> best = StationChoices
                    .of(problem, basket, basket.progress().at(), 0, basket.last()).stream()
                    .flatMap(stations -> new WayPlanner(problem, basket, stations, now).plan(notBefore).stream())
                    .filter(way -> isInTime(basket, way))
                    .min(Comparator.comparingInt(way -> way.ends()[basket.last()]));
            if (best.isPresent()) {
                ways[i] = best.get();
                now.add(basket, best.get());
            } else if (!problem.mayLeaveOut(basket)) {
                return Optional.empty();
            }
        }
        return Optional.of(now);
    }

    private boolean isInTime(Basket basket, Schedule.Way way) {
        int ready = way.ends()[basket.last()] + basket.stages().getLast().clearSeconds();
        if (problem.goal() instanceof Goal.ReadyBy by && problem.mayLeaveOut(basket)) {
            return ready <= by.limitSeconds();
        }
        return problem.sessionOf(basket).map(session -> ready <= session.dueSeconds()).orElse(true);
    }

    private Schedule schedule() {
        List<Optional<Schedule.Way>> all = new ArrayList<>();
        for (Schedule.Way way : ways) {
            all.add(Optional.ofNullable(way));
        }
        return new Schedule(all);
    }
}

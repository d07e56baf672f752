package brightseam.planner.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.StationId;
import brightseam.planner.Basket;
import brightseam.planner.LineProblem;
import brightseam.planner.Schedule;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToLongFunction;

/** The rules of the line as a constraint model. */
final class LineModel {

    /** Reads a value out of whatever found it: a solver at its end or a solution on the way. */
    interface Values extends ToLongFunction<LinearArgument> {}

    final CpModel model = Solvers.model();
    final LineProblem problem;
    final List<BasketVariables> baskets = new ArrayList<>();
    private final List<ErrandVariables> errands = new ArrayList<>();
    private final HandsRules hands;

    LineModel(LineProblem problem) {
        this(problem, true);
    }

    /** With {@code handsBind} false, hands do any number of things at once, inside working hours. */
    LineModel(LineProblem problem, boolean handsBind) {
        this.problem = problem;
        for (Basket basket : problem.baskets()) {
            baskets.add(new BasketVariables(model, problem, basket));
        }
        baskets.forEach(basket -> errands.addAll(basket.errands));
        hands = new HandsRules(model, problem, errands);
        hands.state(handsBind);
        RoomInTanks.state(model, problem, baskets);
        Twins.state(model, baskets, handsBind ? problem.hands().size() : Integer.MAX_VALUE);
    }

    /** The decisions that {@code values} hold. */
    Schedule read(Values values) {
        List<Optional<Schedule.Way>> ways = new ArrayList<>();
        for (BasketVariables basket : baskets) {
            ways.add(values.applyAsLong(basket.present) == 1 ? Optional.of(way(basket, values)) : Optional.empty());
        }
        return new Schedule(ways);
    }

    private static Schedule.Way way(BasketVariables basket, Values values) {
        int stages = basket.start.length;
        List<StationId> stations = new ArrayList<>();
        int[] starts = new int[stages];
        int[] ends = new int[stages];
        for (int number = 0; number < stages; number++) {
            starts[number] = (int) values.applyAsLong(basket.start[number]);
            ends[number] = (int) values.applyAsLong(basket.end[number]);
            stations.add(chosen(basket.at.get(number), values));
        }
        List<BadgeId> persons = basket.errands.stream().map(errand -> chosen(errand.by, values)).toList();
        return new Schedule.Way(stations, starts, ends, persons);
    }

    private static <K> K chosen(Map<K, Literal> choice, Values values) {
        return choice.entrySet().stream().filter(one -> values.applyAsLong(one.getValue()) == 1)
                .map(Map.Entry::getKey).findFirst().orElseThrow();
    }

    List<WalkingOrder.Pair> pairs() {
        return hands.pairs();
    }

    /** A time that no objective lies beyond. */
    long most() {
        return problem.horizonSeconds() * 4L + 1_000_000;
    }

    /** A new variable for times. */
    IntVar time(String name) {
        return model.newIntVar(0, most(), name);
    }
}

package brightseam.planner;

import brightseam.kernel.BadgeId;
import brightseam.kernel.StationId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Every plan of a tiny problem, tried one by one against the checker. Only for problems whose baskets wait, whose
 * times are a few seconds and where nothing is to be gained by holding longer than {@code slackSeconds}.
 */
public final class BruteForce {

    private final LineProblem problem;
    private final int slackSeconds;
    private final List<List<Schedule.Way>> ways = new ArrayList<>();
    private long best = Long.MAX_VALUE;

    private BruteForce(LineProblem problem, int slackSeconds) {
        this.problem = problem;
        this.slackSeconds = slackSeconds;
    }

    /** The measure of the best plan; empty where no plan at all passes the checker. */
    public static Optional<Long> best(LineProblem problem, int slackSeconds) {
        BruteForce force = new BruteForce(problem, slackSeconds);
        for (Basket basket : problem.baskets()) {
            List<Schedule.Way> all = new ArrayList<>();
            LineProblem alone = problem.withBaskets(List.of(basket));
            for (int start = 0; start <= problem.horizonSeconds(); start++) {
                force.ways(basket, 0, start, new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), all);
            }
            all.removeIf(way -> !PlanChecker.check(alone, new Schedule(List.of(Optional.of(way))).toPlan(alone))
                    .isEmpty());
            force.ways.add(all);
        }
        force.combine(new ArrayList<>());
        return force.best == Long.MAX_VALUE ? Optional.empty() : Optional.of(force.best);
    }

    private void ways(Basket basket, int number, int start, List<Integer> starts, List<Integer> ends,
            List<StationId> stations, List<Schedule.Way> all) {
        Stage stage = basket.stages().get(number);
        for (StationId station : stage.stations()) {
            for (int slack = 0; slack <= slackSeconds; slack++) {
                List<Integer> begun = with(starts, start);
                List<Integer> ended = with(ends, start + stage.holdMinSeconds() + slack);
                List<StationId> at = with(stations, station);
                if (number == basket.last()) {
                    persons(basket, new ArrayList<>(), begun, ended, at, all);
                    continue;
                }
                Stage next = basket.stages().get(number + 1);
                for (StationId to : next.stations()) {
                    int arrives = ended.getLast() + stage.clearSeconds() + next.lowerSeconds()
                            + problem.walking().seconds(station, to);
                    for (int wait = 0; wait <= (next.waits() ? slackSeconds : 0); wait++) {
                        ways(basket, number + 1, arrives + wait, begun, ended, at, all);
                    }
                }
            }
        }
    }

    private void persons(Basket basket, List<BadgeId> chosen, List<Integer> starts, List<Integer> ends,
            List<StationId> stations, List<Schedule.Way> all) {
        if (chosen.size() == Errand.of(basket).size()) {
            all.add(new Schedule.Way(stations, starts.stream().mapToInt(i -> i).toArray(),
                    ends.stream().mapToInt(i -> i).toArray(), chosen));
            return;
        }
        for (Hands hands : problem.hands()) {
            persons(basket, with(chosen, hands.person()), starts, ends, stations, all);
        }
    }

    private void combine(List<Optional<Schedule.Way>> chosen) {
        if (chosen.size() == ways.size()) {
            Plan plan = new Schedule(chosen).toPlan(problem);
            if (PlanChecker.check(problem, plan).isEmpty()) {
                best = Math.min(best, Measure.first(problem, plan));
            }
            return;
        }
        for (Schedule.Way way : ways.get(chosen.size())) {
            combine(with(chosen, Optional.of(way)));
        }
        if (problem.mayLeaveOut(problem.baskets().get(chosen.size()))) {
            combine(with(chosen, Optional.empty()));
        }
    }

    private static <T> List<T> with(List<T> list, T more) {
        List<T> longer = new ArrayList<>(list);
        longer.add(more);
        return longer;
    }
}

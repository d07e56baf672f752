package brightseam.planner;

import brightseam.kernel.StationId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;

/**
 * What no plan can be below, by adding up: the work that hands have to do before they can be done, and the time that
 * every tank is taken up. Walking without a basket is left aside, so the bound is a little low.
 */
public final class Bounds {

    private Bounds() {}

    /** What {@link Measure#first} cannot be below for any plan of {@code problem}. */
    public static long first(LineProblem problem) {
        return switch (problem.goal()) {
            case Goal.ForSessions ignored -> {
                long sum = problem.sessions().stream().mapToLong(session -> spanAtLeast(problem,
                        problem.baskets().stream().filter(basket -> problem.sessionOf(basket)
                                .filter(session::equals).isPresent()).toList())).sum();
                yield sum + lastEndAtLeast(problem, problem.baskets().stream()
                        .filter(basket -> problem.sessionOf(basket).isEmpty()).toList());
            }
            case Goal.Soonest ignored -> lastEndAtLeast(problem, problem.baskets());
            case Goal.ReadyBy ignored -> 0;
        };
    }

    /** The earliest that the last of {@code baskets} can be ready, in seconds. */
    public static int lastEndAtLeast(LineProblem problem, List<Basket> baskets) {
        int bound = 0;
        for (Basket basket : baskets) {
            bound = Math.max(bound, firstWork(problem, basket) + passage(problem, basket));
        }
        bound = Math.max(bound, byHands(problem, baskets));
        for (List<StationId> tanks : classes(baskets)) {
            bound = Math.max(bound, byTanks(problem, baskets, tanks));
        }
        return bound;
    }

    /** The shortest time from the first start to ready that {@code baskets}, none begun, can be worked in, in seconds. */
    public static int spanAtLeast(LineProblem problem, List<Basket> baskets) {
        List<Basket> fresh = baskets.stream().filter(Basket::mayStay).toList();
        if (fresh.isEmpty()) {
            return 0;
        }
        int bound = fresh.stream().mapToInt(basket -> fromFirstStart(problem, basket)).max().orElse(0);
        long work = fresh.stream().mapToLong(basket -> work(problem, basket)).sum();
        int before = fresh.stream().mapToInt(basket -> arrival(problem, basket)).max().orElse(0);
        int after = fresh.stream().mapToInt(Bounds::afterWork).min().orElse(0);
        int hands = Math.max(1, problem.hands().size());
        return Math.max(bound, (int) Math.ceilDiv(work, hands) - before + after);
    }

    private static int byHands(LineProblem problem, List<Basket> baskets) {
        long work = baskets.stream().mapToLong(basket -> work(problem, basket)).sum();
        int after = baskets.stream().filter(basket -> work(problem, basket) > 0)
                .mapToInt(Bounds::afterWork).min().orElse(0);
        int first = baskets.stream().filter(basket -> work(problem, basket) > 0)
                .mapToInt(basket -> firstWork(problem, basket)).min().orElse(0);
        return work == 0 ? 0 : endOfWork(problem, first, work) + after;
    }

    /** When {@code work} seconds of hands' work from {@code first} on can be done at the earliest, breaks kept. */
    private static int endOfWork(LineProblem problem, int first, long work) {
        int low = first;
        int high = Math.max(first, problem.horizonSeconds());
        while (low < high) {
            int middle = low + (high - low) / 2;
            if (worked(problem, first, middle) >= work) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    private static long worked(LineProblem problem, int from, int until) {
        return problem.hands().stream().flatMap(one -> one.shifts().stream()).mapToLong(shift -> Math.max(0,
                Math.min(until, shift.untilSeconds()) - Math.max(from, shift.fromSeconds()))).sum();
    }

    private static int byTanks(LineProblem problem, List<Basket> baskets, List<StationId> tanks) {
        long taken = 0;
        int head = Integer.MAX_VALUE;
        int tail = Integer.MAX_VALUE;
        for (Basket basket : baskets) {
            Optional<Integer> first = stagesAt(basket, tanks).stream().findFirst();
            if (first.isPresent()) {
                for (int number : stagesAt(basket, tanks)) {
                    Stage stage = basket.stages().get(number);
                    taken += Math.max(0, stage.holdMinSeconds() + alreadyHeld(basket, number)) + stage.clearSeconds()
                            + (begun(basket, number) ? 0 : stage.lowerSeconds());
                }
                int last = stagesAt(basket, tanks).getLast();
                head = Math.min(head, toStage(problem, basket, first.get()));
                tail = Math.min(tail, fromStage(problem, basket, last));
            }
        }
        int room = tanks.stream().mapToInt(tank -> problem.tank(tank).capacityBaskets()).sum();
        return taken == 0 ? 0 : head + (int) Math.ceilDiv(taken, room) + tail;
    }

    private static Set<List<StationId>> classes(List<Basket> baskets) {
        Set<List<StationId>> classes = new HashSet<>();
        baskets.forEach(basket -> basket.stages().forEach(
                stage -> classes.add(stage.stations().stream().sorted().toList())));
        return classes;
    }

    private static boolean begun(Basket basket, int number) {
        return number == 0 && basket.isInStage();
    }

    /** Zero, or the seconds of a hold in progress that are over, below zero. */
    private static int alreadyHeld(Basket basket, int number) {
        return begun(basket, number) ? ((Progress.InStage) basket.progress()).sinceSeconds() : 0;
    }

    private static List<Integer> stagesAt(Basket basket, List<StationId> tanks) {
        List<Integer> numbers = new ArrayList<>();
        for (int number = 0; number <= basket.last(); number++) {
            List<StationId> stations = begun(basket, number)
                    ? List.of(basket.progress().at()) : basket.stages().get(number).stations();
            if (tanks.containsAll(stations)) {
                numbers.add(number);
            }
        }
        return numbers;
    }

    private static int firstWork(LineProblem problem, Basket basket) {
        return basket.isInStage() ? Math.max(0, alreadyHeld(basket, 0)
                + (basket.stages().getFirst().isAttended() ? 0 : basket.stages().getFirst().holdMinSeconds()))
                : Math.max(0, basket.earliestStartSeconds());
    }

    private static int arrival(LineProblem problem, Basket basket) {
        return least(basket.stages().getFirst().stations(),
                one -> problem.walking().seconds(basket.progress().at(), one))
                + basket.stages().getFirst().lowerSeconds();
    }

    /** Seconds from now until the stage's tank is taken up, at least. */
    private static int toStage(LineProblem problem, Basket basket, int number) {
        if (begun(basket, number)) {
            return 0;
        }
        int seconds = basket.isInStage() ? 0 : Math.max(0, basket.earliestStartSeconds()) + arrival(problem, basket);
        for (int i = 0; i < number; i++) {
            seconds += Math.max(0, basket.stages().get(i).holdMinSeconds() + alreadyHeld(basket, i))
                    + transfer(problem, basket, i);
        }
        return seconds - (number == 0 ? basket.stages().getFirst().lowerSeconds()
                : basket.stages().get(number).lowerSeconds());
    }

    /** Seconds from when the stage's tank is free again until the basket is ready, at least. */
    private static int fromStage(LineProblem problem, Basket basket, int number) {
        int seconds = -basket.stages().get(number).clearSeconds();
        for (int i = number + 1; i <= basket.last(); i++) {
            seconds += transfer(problem, basket, i - 1) + basket.stages().get(i).holdMinSeconds();
        }
        return seconds + basket.stages().getLast().clearSeconds();
    }

    private static int transfer(LineProblem problem, Basket basket, int before) {
        Stage from = basket.stages().get(before);
        Stage to = basket.stages().get(before + 1);
        List<StationId> starts = begun(basket, before) ? List.of(basket.progress().at()) : from.stations();
        return from.clearSeconds() + to.lowerSeconds() + (to.isAtStationBefore() ? 0 : least(starts,
                one -> least(to.stations(), other -> problem.walking().seconds(one, other))));
    }

    private static int least(List<StationId> stations, ToIntFunction<StationId> seconds) {
        return stations.stream().mapToInt(seconds).min().orElse(0);
    }

    private static int fromFirstStart(LineProblem problem, Basket basket) {
        return basket.stages().getFirst().holdMinSeconds() + basket.stages().getFirst().clearSeconds()
                + fromStage(problem, basket, 0);
    }

    /** From the first hands' work until ready. */
    private static int passage(LineProblem problem, Basket basket) {
        int held = basket.isInStage() ? (basket.stages().getFirst().isAttended()
                ? Math.max(0, basket.stages().getFirst().holdMinSeconds() + alreadyHeld(basket, 0)) : 0)
                : arrival(problem, basket) + basket.stages().getFirst().holdMinSeconds();
        return held + basket.stages().getFirst().clearSeconds() + fromStage(problem, basket, 0);
    }

    private static int work(LineProblem problem, Basket basket) {
        int work = 0;
        for (Errand errand : Errand.of(basket)) {
            for (Errand.Piece piece : errand.pieces()) {
                Stage stage = basket.stages().get(piece.stage());
                work += switch (piece.kind()) {
                    case CARRY -> piece.stage() == 0 ? arrival(problem, basket) - stage.lowerSeconds()
                            : transfer(problem, basket, piece.stage() - 1) - stage.lowerSeconds();
                    case LOWER -> stage.lowerSeconds();
                    case ATTEND -> Math.max(0, stage.holdMinSeconds() + alreadyHeld(basket, piece.stage()));
                    case LIFT_OUT -> stage.clearSeconds();
                };
            }
        }
        return work;
    }

    /** Seconds from the end of the last hands' work until ready. */
    private static int afterWork(Basket basket) {
        Stage last = basket.stages().getLast();
        return last.isAttended() || last.clearSeconds() > 0 ? 0 : last.holdMinSeconds();
    }
}
